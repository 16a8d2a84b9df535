import { costSheet } from '@scantling/costing';
import { defineContract } from '../contract.ts';
import { workingQuery } from '../figures.ts';
import { recordParams } from '../record.ts';
import { exampleCostSheet } from './cost-sheet.ts';
import { exampleSheetInput } from './example-sheet-input.ts';
import { toWorkedCostSheet, workedCostSheetSchema } from './worked-cost-sheet.ts';

export const workOutCostSheet = defineContract({
  name: 'work-out-cost-sheet',
  method: 'GET',
  path: '/api/cost-sheets/:id/figures',
  summary: 'Work out a cost sheet',
  description:
    'Costs and price at every number of pieces, from the bill, the prices in force on its date and the shop rates as they are now. `working=true` brings every derivation down to the price list line.',
  tag: 'cost-sheets',
  roles: 'anyone',
  params: recordParams,
  query: workingQuery,
  answer: workedCostSheetSchema,
  example: {
    params: { id: exampleCostSheet.id },
    answer: toWorkedCostSheet(costSheet(exampleSheetInput), { withDerivations: false }),
  },
});
