import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { examplePriceImport, priceImportSchema } from './price-import.ts';
import { priceListTerms } from './price-list.ts';

export const pastePriceImport = defineContract({
  name: 'paste-price-import',
  method: 'POST',
  path: '/api/price-imports/pasted',
  summary: 'Send a price list as pasted text',
  description:
    'Rows copied from a spreadsheet (tab separated) or CSV text, headers first; goes on like a file.',
  tag: 'price-lists',
  roles: RECORD_KEEPERS,
  body: priceListTerms.partial({ name: true }).extend({ text: z.string().min(1).max(5_000_000) }),
  answer: priceImportSchema,
  status: 202,
  example: {
    body: {
      supplierId: examplePriceImport.supplierId,
      validFrom: examplePriceImport.validFrom,
      text: 'code\tunit\tprice\nA-44-FAS\tbd ft\t6.40',
    },
    answer: { ...examplePriceImport, status: 'reading' },
  },
});
