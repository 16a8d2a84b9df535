import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { exampleOverheadAmount, overheadAmountSchema } from './overhead-amount.ts';

export const listOverheadAmounts = defineContract({
  name: 'list-overhead-amounts',
  method: 'GET',
  path: '/api/overhead/amounts',
  summary: 'List the yearly amounts',
  description: 'The yearly costs of being open, by name, each with its one home.',
  tag: 'overhead',
  roles: 'anyone',
  query: pageQuery,
  answer: pageOf(overheadAmountSchema),
  example: { query: { limit: 50 }, answer: { items: [exampleOverheadAmount], next: null } },
});
