import { boardTally, TALLY_ROUNDINGS } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText } from '../decimal-text.ts';
import { figureId, figureTableSchema } from '../figures.ts';
import { calculationQuery, type WorkingOptions } from './calculation.ts';

const bodySchema = z.strictObject({
  /** As it stands on the tally; dry boards have shrunk, so the same tree measures less. */
  moisture: z.enum(['green', 'dry']),
  rounding: z.enum(TALLY_ROUNDINGS).default('exact'),
  boards: z
    .array(
      z.strictObject({
        count: decimalText.default('1'),
        /** Nominal: 4/4 is "1". */
        thicknessIn: decimalText,
        /** Nominal for softwood, measured for hardwood. */
        widthIn: decimalText,
        lengthFt: decimalText,
      }),
    )
    .min(1)
    .max(1000),
});

const answerSchema = z.strictObject({
  moisture: z.enum(['green', 'dry']),
  lines: z.array(z.strictObject({ surface: figureId, boardFeetEach: figureId, boardFeet: figureId })),
  total: figureId,
  figures: figureTableSchema,
});

/** @throws CostingInputError */
export function workOutBoardMeasure(
  { boards, rounding, moisture }: z.output<typeof bodySchema>,
  options: WorkingOptions,
): z.output<typeof answerSchema> {
  // No amount of money is in it; the context's currency is not looked at.
  const tally = boardTally(boards, rounding, { currency: 'EUR' });
  const table = new FigureTableBuilder(options);
  return {
    moisture,
    lines: tally.lines.map((line, index) => ({
      surface: table.add(`lines/${index}/surface`, line.surface),
      boardFeetEach: table.add(`lines/${index}/board-feet-each`, line.boardFeetEach),
      boardFeet: table.add(`lines/${index}/board-feet`, line.boardFeet),
    })),
    total: table.add('total', tally.total),
    figures: table.table(),
  };
}

const body: z.input<typeof bodySchema> = {
  moisture: 'dry',
  rounding: 'surface-measure',
  boards: [{ count: '1', thicknessIn: '2', widthIn: '6.25', lengthFt: '8' }],
};

export const boardMeasure = defineContract({
  name: 'board-measure',
  method: 'POST',
  path: '/api/calculations/board-measure',
  summary: 'Board feet of boards',
  description:
    'max(1, nominal thickness in) x width in x length ft / 12; or as hardwood is graded, with whole feet and the surface measure of each board rounded before its thickness.',
  tag: 'calculations',
  roles: 'anyone',
  query: calculationQuery,
  body: bodySchema,
  answer: answerSchema,
  example: { body, answer: workOutBoardMeasure(bodySchema.parse(body), { withDerivations: true }) },
});
