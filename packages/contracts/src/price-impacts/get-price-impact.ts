import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { examplePriceImpact, priceImpactSchema } from './price-impact.ts';

export const getPriceImpact = defineContract({
  name: 'get-price-impact',
  method: 'GET',
  path: '/api/price-lists/:id/impact',
  summary: 'Read how the impact of a price list stands',
  description: 'Progress while it is worked out, then how many open quotes and cost sheets its prices move.',
  tag: 'price-impacts',
  roles: 'anyone',
  params: recordParams,
  answer: priceImpactSchema,
  example: { params: { id: examplePriceImpact.listId }, answer: examplePriceImpact },
});
