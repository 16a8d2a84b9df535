import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordId } from '../record.ts';
import { costSheetSchema, exampleCostSheet } from './cost-sheet.ts';

export const listCostSheets = defineContract({
  name: 'list-cost-sheets',
  method: 'GET',
  path: '/api/cost-sheets',
  summary: 'List the cost sheets',
  description: 'By title; those of one design with `designId`.',
  tag: 'cost-sheets',
  roles: 'anyone',
  query: pageQuery.extend({ designId: recordId.optional() }),
  answer: pageOf(costSheetSchema),
  example: { answer: { items: [exampleCostSheet], next: null } },
});
