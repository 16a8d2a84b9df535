import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordId } from '../record.ts';
import { examplePriceList, priceListSchema } from './price-list.ts';

export const listPriceLists = defineContract({
  name: 'list-price-lists',
  method: 'GET',
  path: '/api/price-lists',
  summary: 'List price lists',
  description: 'Newest date first; of all suppliers, or of one.',
  tag: 'price-lists',
  roles: 'anyone',
  query: pageQuery.extend({ supplierId: recordId.optional() }),
  answer: pageOf(priceListSchema),
  example: { answer: { items: [examplePriceList], next: null } },
});
