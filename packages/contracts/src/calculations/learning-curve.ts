import { LEARNING_MODELS, learningTimes } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText } from '../decimal-text.ts';
import { figureId, figureTableSchema } from '../figures.ts';
import { calculationQuery, type WorkingOptions } from './calculation.ts';

const bodySchema = z.strictObject({
  model: z.enum(LEARNING_MODELS),
  /** "0.8" is an 80 % curve. */
  rate: decimalText,
  firstUnitHours: decimalText,
  /** Numbers of pieces to work out. */
  units: z.array(z.number().int().min(1).max(2000)).min(1).max(20),
});

const answerSchema = z.strictObject({
  exponent: figureId,
  firstUnit: figureId,
  runs: z.array(
    z.strictObject({ units: z.number().int(), total: figureId, average: figureId, lastUnit: figureId }),
  ),
  figures: figureTableSchema,
});

/** @throws CostingInputError */
export function workOutLearningCurve(
  { units, ...curve }: z.output<typeof bodySchema>,
  options: WorkingOptions,
): z.output<typeof answerSchema> {
  const context = { currency: 'EUR' } as const;
  const table = new FigureTableBuilder(options);
  const [first, ...more] = units.map((count) => ({
    count,
    times: learningTimes({ ...curve, units: count }, context),
  }));
  if (first === undefined) throw new RangeError('the schema asks for at least one count');
  return {
    exponent: table.add('exponent', first.times.exponent),
    firstUnit: table.add('first-unit', first.times.firstUnit),
    runs: [first, ...more].map(({ count, times }) => ({
      units: count,
      total: table.add(`runs/${count}/total`, times.total),
      average: table.add(`runs/${count}/average`, times.average),
      lastUnit: table.add(`runs/${count}/last-unit`, times.lastUnit),
    })),
    figures: table.table(),
  };
}

const body: z.input<typeof bodySchema> = { model: 'unit', rate: '0.85', firstUnitHours: '14', units: [1, 5] };

export const learningCurve = defineContract({
  name: 'learning-curve',
  method: 'POST',
  path: '/api/calculations/learning-curve',
  summary: 'Hours for several pieces',
  description:
    'Total, average and last piece of a run, where each doubling takes the time of the piece (unit model) or the average so far (cumulative-average model) to the rate.',
  tag: 'calculations',
  roles: 'anyone',
  query: calculationQuery,
  body: bodySchema,
  answer: answerSchema,
  example: {
    body,
    answer: workOutLearningCurve(bodySchema.parse(body), { withDerivations: true }),
  },
});
