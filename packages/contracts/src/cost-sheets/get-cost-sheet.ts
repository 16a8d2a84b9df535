import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { costSheetSchema, exampleCostSheet } from './cost-sheet.ts';

export const getCostSheet = defineContract({
  name: 'get-cost-sheet',
  method: 'GET',
  path: '/api/cost-sheets/:id',
  summary: 'Read what a cost sheet is made for',
  description:
    'Design, client, basis, date, numbers of pieces and terms; its numbers are read with work-out-cost-sheet.',
  tag: 'cost-sheets',
  roles: 'anyone',
  params: recordParams,
  answer: costSheetSchema,
  givesEtag: true,
  example: { params: { id: exampleCostSheet.id }, answer: exampleCostSheet },
});
