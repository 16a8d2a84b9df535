import { z } from 'zod';
import { figureKey } from '../calculations/figure-question.ts';
import { exampleRiskAnswer, quotedFields, riskAnswerSchema, riskFields } from '../calculations/risk.ts';
import { defineContract } from '../contract.ts';
import { positiveDecimalText } from '../decimal-text.ts';
import { recordParams } from '../record.ts';
import { exampleCostSheet } from './cost-sheet.ts';
import { sheetQuestionFields } from './sheet-question.ts';

const { quantity, result } = sheetQuestionFields;

export const workOutRisk = defineContract({
  name: 'work-out-risk',
  method: 'POST',
  path: '/api/cost-sheets/:id/risk',
  summary: 'How far the cost of a cost sheet may be off',
  description:
    "The sheet's own figures at one number of pieces, with the three-point times of its bill and other estimates drawn again and again; see the calculation `risk`. The contingency of the sheet's terms, a percentage, is left out: what comes out here stands in its place. Nothing is stored.",
  tag: 'cost-sheets',
  roles: 'anyone',
  params: recordParams,
  body: z.strictObject({
    quantity,
    results: z.array(result).min(1).max(12).default(['classes/costOfProduction']),
    ...riskFields,
    quoted: z
      .strictObject({
        cost: figureKey.default('classes/costOfProduction'),
        price: positiveDecimalText
          .exactOptional()
          .meta({ description: "The sheet's own net price where left out" }),
        ...quotedFields,
      })
      .prefault({})
      .meta({
        description: 'A price that is settled: how likely is a loss, and a margin below the least wanted',
      }),
  }),
  answer: riskAnswerSchema,
  example: {
    params: { id: exampleCostSheet.id },
    body: { quantity: 1, quoted: { price: '450', leastMargin: '0.15' } },
    answer: exampleRiskAnswer,
  },
});
