import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { examplePriceImport, priceImportSchema } from './price-import.ts';

export const applyPriceImport = defineContract({
  name: 'apply-price-import',
  method: 'POST',
  path: '/api/price-imports/:id/apply',
  summary: 'Take over the prices of an import',
  description:
    'Whole or not at all, as one new price list. Refused while rows cannot be read, unless they are left out on purpose. Applying again changes nothing.',
  tag: 'price-lists',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: z.strictObject({ leaveOutUnreadable: z.boolean().default(false) }),
  answer: priceImportSchema,
  example: {
    params: { id: examplePriceImport.id },
    body: { leaveOutUnreadable: true },
    answer: { ...examplePriceImport, status: 'applied', priceListId: '0193f6a0-7c11-7000-8000-000000000040' },
  },
});
