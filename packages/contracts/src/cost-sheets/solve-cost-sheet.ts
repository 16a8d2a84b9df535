import { Effort } from '@scantling/figures';
import { z } from 'zod';
import { exampleFigures } from '../calculations/example-figures.ts';
import { solutionOf, solveAnswerSchema, solveFields } from '../calculations/solve.ts';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleCostSheet } from './cost-sheet.ts';
import { sheetQuestionFields } from './sheet-question.ts';

const target = { value: '500' };

export const solveCostSheet = defineContract({
  name: 'solve-cost-sheet',
  method: 'POST',
  path: '/api/cost-sheets/:id/solve',
  summary: 'What a value of a cost sheet must be for a result',
  description:
    "The sheet's own figures at one number of pieces; see the calculation `solve`. A target may be another figure of the sheet. Nothing is stored.",
  tag: 'cost-sheets',
  roles: 'anyone',
  params: recordParams,
  body: z.strictObject({ ...sheetQuestionFields, ...solveFields }),
  answer: solveAnswerSchema,
  example: {
    params: { id: exampleCostSheet.id },
    body: { quantity: 1, result: 'price/netPrice', leaf: 'terms/freight', target },
    answer: solutionOf({ figures: exampleFigures, result: 'price', leaf: 'ash/price', target }, new Effort()),
  },
});
