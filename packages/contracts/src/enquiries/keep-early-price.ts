import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleEnquiry } from './enquiry.ts';
import { exampleKeptEarlyPrice, keptEarlyPriceSchema } from './kept-early-price.ts';
import { earlyPriceInputSchema, exampleEarlyPriceInput } from './worked-early-price.ts';

export const keepEarlyPrice = defineContract({
  name: 'keep-early-price',
  method: 'POST',
  path: '/api/enquiries/:id/early-prices',
  summary: 'Keep an early price on its enquiry',
  description:
    'Works it out and keeps input and figures for good. A range before a bill of materials exists, not an offer; a correction is another one.',
  tag: 'enquiries',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: z.strictObject({ input: earlyPriceInputSchema, note: z.string().trim().max(1000) }),
  answer: keptEarlyPriceSchema,
  status: 201,
  idempotent: true,
  example: {
    params: { id: exampleEnquiry.id },
    body: { input: exampleEarlyPriceInput, note: exampleKeptEarlyPrice.note },
    answer: exampleKeptEarlyPrice,
  },
});
