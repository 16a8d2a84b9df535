import { costSheet } from '@scantling/costing';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { workingQuery } from '../figures.ts';
import { recordParams } from '../record.ts';
import { designChoiceFields, exampleCostSheet } from './cost-sheet.ts';
import { exampleSheetInput } from './example-sheet-input.ts';
import { toWorkedCostSheet, workedCostSheetSchema } from './worked-cost-sheet.ts';

export const tryCostSheet = defineContract({
  name: 'try-cost-sheet',
  method: 'POST',
  path: '/api/cost-sheets/:id/figures',
  summary: 'Work out a cost sheet with other choices',
  description:
    'The same sheet for another variant, other values of parameters or another revision of its design; an empty choice gives it as drawn. Nothing is stored.',
  tag: 'cost-sheets',
  roles: 'anyone',
  params: recordParams,
  query: workingQuery,
  body: z.strictObject(designChoiceFields),
  answer: workedCostSheetSchema,
  example: {
    params: { id: exampleCostSheet.id },
    body: { variant: null, parameterValues: { length: '1350' } },
    answer: toWorkedCostSheet(costSheet(exampleSheetInput), { withDerivations: false }),
  },
});
