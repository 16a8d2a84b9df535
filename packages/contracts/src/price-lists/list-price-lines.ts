import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordParams } from '../record.ts';
import { exampleLine, examplePriceList, priceLineSchema } from './price-list.ts';

export const listPriceLines = defineContract({
  name: 'list-price-lines',
  method: 'GET',
  path: '/api/price-lists/:id/lines',
  summary: 'Read the lines of a price list',
  description: 'In the order of the list. `search` finds part of a code or description.',
  tag: 'price-lists',
  roles: 'anyone',
  params: recordParams,
  query: pageQuery.extend({ search: z.string().trim().max(100).optional() }),
  answer: pageOf(priceLineSchema),
  example: { params: { id: examplePriceList.id }, answer: { items: [exampleLine], next: null } },
});
