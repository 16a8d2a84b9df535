import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { examplePriceImpact, priceImpactSchema } from './price-impact.ts';

export const workOutPriceImpact = defineContract({
  name: 'work-out-price-impact',
  method: 'POST',
  path: '/api/price-lists/:id/impact',
  summary: 'Work out the impact of a price list',
  description:
    'Finds the open quotes and cost sheets that rest on prices the list replaced, and costs them with and without it, ' +
    'beside the requests; goes on after a restart. Begins by itself when a list is taken over. Done again, it keeps what was decided.',
  tag: 'price-impacts',
  roles: MAKERS,
  params: recordParams,
  answer: priceImpactSchema,
  status: 202,
  example: {
    params: { id: examplePriceImpact.listId },
    answer: { ...examplePriceImpact, status: 'waiting', worked: 0 },
  },
});
