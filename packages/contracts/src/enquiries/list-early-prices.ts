import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordParams } from '../record.ts';
import { exampleEnquiry } from './enquiry.ts';
import { exampleKeptEarlyPrice, keptEarlyPriceSchema } from './kept-early-price.ts';

export const listEarlyPrices = defineContract({
  name: 'list-early-prices',
  method: 'GET',
  path: '/api/enquiries/:id/early-prices',
  summary: 'Read the early prices given for an enquiry',
  description: 'The newest first.',
  tag: 'enquiries',
  roles: 'anyone',
  params: recordParams,
  query: pageQuery,
  answer: pageOf(keptEarlyPriceSchema),
  example: { params: { id: exampleEnquiry.id }, answer: { items: [exampleKeptEarlyPrice], next: null } },
});
