import { finishQuantity as quantityOf } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText } from '../decimal-text.ts';
import { figureId, figureTableSchema, sourceSchema } from '../figures.ts';
import { calculationQuery, leafId, leafName, namingFields, type WorkingOptions } from './calculation.ts';

const filmSchema = z.strictObject({
  kind: z.literal('film'),
  volumeSolids: decimalText,
  transferEfficiency: decimalText,
  dryFilmPerCoat: decimalText,
  usConstant: z.enum(['exact', 'as-printed']).exactOptional(),
});
const coverageSchema = z.strictObject({
  kind: z.literal('coverage'),
  areaPerUnit: decimalText,
  isTheoretical: z.boolean(),
  transferEfficiency: decimalText.exactOptional(),
});

const bodySchema = z.strictObject({
  finish: z.strictObject({
    id: leafId,
    name: leafName,
    /** us: ft2, mil and US gallons. metric: m2, micrometres and litres. */
    system: z.enum(['us', 'metric']),
    area: decimalText,
    coats: decimalText,
    isWipedOil: z.boolean(),
    by: z.discriminatedUnion('kind', [filmSchema, coverageSchema]),
    mixing: z.strictObject({ batches: decimalText, restPerBatch: decimalText }).exactOptional(),
  }),
});

const answerSchema = z.strictObject({
  spreadingRate: figureId,
  /** null where the finish goes by coverage. */
  wetFilm: figureId.nullable(),
  applied: figureId,
  /** Lost with mixed batches; null where nothing is mixed. */
  rest: figureId.nullable(),
  quantity: figureId,
  litres: figureId,
  caution: z.strictObject({ text: z.string(), source: sourceSchema }).nullable(),
  figures: figureTableSchema,
});

const FIELDS_OF_BY: readonly string[] = [
  ...Object.keys(filmSchema.shape),
  ...Object.keys(coverageSchema.shape),
];

/** @throws CostingInputError */
export function workOutFinishQuantity(
  { finish }: z.output<typeof bodySchema>,
  options: WorkingOptions,
): z.output<typeof answerSchema> {
  const worked = namingFields(
    (field) => (FIELDS_OF_BY.includes(field) ? `finish.by.${field}` : `finish.${field}`),
    () => quantityOf(finish, { currency: 'EUR' }),
  );
  const { spreadingRate, wetFilm, applied, rest, quantity, litres, caution } = worked;
  const table = new FigureTableBuilder(options);
  return {
    spreadingRate: table.add('spreading-rate', spreadingRate),
    wetFilm: wetFilm === null ? null : table.add('wet-film', wetFilm),
    applied: table.add('applied', applied),
    rest: rest === null ? null : table.add('rest', rest),
    quantity: table.add('quantity', quantity),
    litres: table.add('litres', litres),
    caution,
    figures: table.table(),
  };
}

const body: z.input<typeof bodySchema> = {
  finish: {
    id: 'varnish',
    name: 'Varnish',
    system: 'metric',
    area: '4.2',
    coats: '3',
    isWipedOil: false,
    by: { kind: 'film', volumeSolids: '0.4', transferEfficiency: '0.9', dryFilmPerCoat: '30' },
  },
};

export const finishQuantity = defineContract({
  name: 'finish-quantity',
  method: 'POST',
  path: '/api/calculations/finish-quantity',
  summary: 'How much finish a job takes',
  description:
    'Area x coats over the area that a unit covers: from film, volume solids and transfer efficiency, or from a coverage; with the rest that mixed batches lose.',
  tag: 'calculations',
  roles: 'anyone',
  query: calculationQuery,
  body: bodySchema,
  answer: answerSchema,
  example: { body, answer: workOutFinishQuantity(bodySchema.parse(body), { withDerivations: true }) },
});
