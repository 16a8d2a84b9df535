import { Effort } from '@scantling/figures';
import { z } from 'zod';
import { exampleFigures } from '../calculations/example-figures.ts';
import { sensitivityAnswerSchema, sensitivityFields, sensitivityOf } from '../calculations/sensitivity.ts';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleCostSheet } from './cost-sheet.ts';
import { sheetQuestionFields } from './sheet-question.ts';

const asked = { move: '0.1', ranges: {}, usesThreePoints: false, most: 10 };

export const workOutSensitivity = defineContract({
  name: 'work-out-sensitivity',
  method: 'POST',
  path: '/api/cost-sheets/:id/sensitivity',
  summary: 'Which values move a result of a cost sheet most',
  description:
    "The sheet's own figures at one number of pieces, each value it rests on moved alone; see the calculation `sensitivity`. Nothing is stored.",
  tag: 'cost-sheets',
  roles: 'anyone',
  params: recordParams,
  body: z.strictObject({ ...sheetQuestionFields, ...sensitivityFields }),
  answer: sensitivityAnswerSchema,
  example: {
    params: { id: exampleCostSheet.id },
    body: { quantity: 1, result: 'price/netPrice', ...asked },
    answer: sensitivityOf({ figures: exampleFigures, result: 'price', ...asked }, new Effort()),
  },
});
