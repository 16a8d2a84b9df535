import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleEnquiry } from './enquiry.ts';
import { exampleFrozenEarlyPrice, frozenEarlyPriceSchema } from './kept-early-price.ts';

export const getEarlyPrice = defineContract({
  name: 'get-early-price',
  method: 'GET',
  path: '/api/enquiries/:id/early-prices/:number',
  summary: 'Read an early price as it was given',
  description: 'With all its figures; nothing is worked out again.',
  tag: 'enquiries',
  roles: 'anyone',
  params: recordParams.extend({ number: z.coerce.number().int().min(1).max(100_000) }),
  answer: frozenEarlyPriceSchema,
  example: { params: { id: exampleEnquiry.id, number: 1 }, answer: exampleFrozenEarlyPrice },
});
