import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordParams } from '../record.ts';
import { examplePriceImpactRow, priceImpactRowSchema } from './price-impact.ts';

export const listPriceImpactRows = defineContract({
  name: 'list-price-impact-rows',
  method: 'GET',
  path: '/api/price-lists/:id/impact/rows',
  summary: 'List what a price list touches',
  description:
    'Open quotes and cost sheets with cost, net price and margin before and after, the most money first; what was decided comes last.',
  tag: 'price-impacts',
  roles: 'anyone',
  params: recordParams,
  query: pageQuery,
  answer: pageOf(priceImpactRowSchema),
  example: {
    params: { id: examplePriceImpactRow.listId },
    answer: { items: [examplePriceImpactRow], next: null },
  },
});
