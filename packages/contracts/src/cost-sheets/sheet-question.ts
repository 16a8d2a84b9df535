import { z } from 'zod';
import { figureKey } from '../calculations/figure-question.ts';

/** Which figure of a stored cost sheet a question is about. */
export const sheetQuestionFields = {
  quantity: z
    .number()
    .int()
    .min(1)
    .max(2000)
    .meta({ description: 'One of the numbers of pieces of the sheet' }),
  result: figureKey.meta({
    description:
      "A figure's id as the sheet's answer gives it, or its name in the column: price/netPrice, perPiece/cost, classes/costOfProduction",
    examples: ['price/netPrice'],
  }),
};
