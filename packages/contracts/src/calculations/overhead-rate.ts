import {
  COST_BASES,
  HOURLY_BASES,
  OVERHEAD_POOLS,
  type OverheadRate,
  overheadCharge,
  overheadRate as rateOf,
} from '@scantling/costing';
import { entered, type Figure, FigureTableBuilder, input } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText, nonNegativeDecimalText } from '../decimal-text.ts';
import { currencySchema, figureId, figureTableSchema } from '../figures.ts';
import { overheadRateSchema, toWorkedOverheadRate } from '../overhead/worked-overhead-rate.ts';
import { calculationQuery, leafId, leafName, namingFields, type WorkingOptions } from './calculation.ts';

const bodySchema = z.strictObject({
  currency: currencySchema,
  pool: z.strictObject({
    id: leafId,
    name: leafName,
    kind: z.enum(OVERHEAD_POOLS),
    amounts: z.array(z.strictObject({ id: leafId, name: leafName, yearlyAmount: decimalText })).max(500),
    /** What machine-hour and labour rates recover of these amounts. */
    recoveredByRates: decimalText.exactOptional(),
    base: z.enum([...HOURLY_BASES, ...COST_BASES]),
    plannedBase: decimalText,
    actual: z.strictObject({ amount: decimalText, base: decimalText }).exactOptional(),
  }),
  /** Hours, or labour or prime cost, of jobs whose share of the overhead is wanted. */
  quantities: z.array(nonNegativeDecimalText).max(200).default([]),
});

const answerSchema = overheadRateSchema.extend({ charges: z.array(figureId), figures: figureTableSchema });
type Body = z.output<typeof bodySchema>;

/** @throws CostingInputError */
export function workOutOverheadRate(
  { currency, pool, quantities }: Body,
  options: WorkingOptions,
): z.output<typeof answerSchema> {
  const rate = namingFields(
    (field) => `pool.${field}`,
    () => rateOf(pool, { currency, source: entered() }),
  );
  const table = new FigureTableBuilder(options);
  const charges = quantities.map((value, index) =>
    table.add(`charges/${index}`, chargeOf(rate, value, index, currency)),
  );
  return { ...toWorkedOverheadRate(rate, table), charges, figures: table.table() };
}

function chargeOf(
  rate: OverheadRate,
  value: string,
  index: number,
  currency: Body['currency'],
): Figure<'money'> {
  const label = `job ${index + 1}`;
  const leaf = { key: `quantities/${index}`, label: `${label}: ${rate.base}`, value, source: entered() };
  const isHourly = HOURLY_BASES.some((base) => base === rate.base);
  const quantity = isHourly ? input({ ...leaf, unit: 'h' }) : input({ ...leaf, unit: 'money', currency });
  return overheadCharge(`${label}: ${rate.name}`, rate, quantity);
}

const body: z.input<typeof bodySchema> = {
  currency: 'EUR',
  pool: {
    id: 'workshop',
    name: 'Workshop overhead',
    kind: 'workshop',
    amounts: [{ id: 'rent', name: 'Rent', yearlyAmount: '12000' }],
    recoveredByRates: '3000',
    base: 'productive-hours',
    plannedBase: '1500',
    actual: { amount: '9500', base: '1420' },
  },
  quantities: ['12.5'],
};

export const overheadRate = defineContract({
  name: 'overhead-rate',
  method: 'POST',
  path: '/api/calculations/overhead-rate',
  summary: 'Overhead over hours or cost',
  description:
    'A pool of yearly amounts, net of what rates recover, over its base at plan and as the year went; and what jobs are charged.',
  tag: 'calculations',
  roles: 'anyone',
  query: calculationQuery,
  body: bodySchema,
  answer: answerSchema,
  example: {
    body,
    answer: workOutOverheadRate(bodySchema.parse(body), { withDerivations: true }),
  },
});
