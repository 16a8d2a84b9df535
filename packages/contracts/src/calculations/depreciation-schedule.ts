import { depreciationSchedule as scheduleOf } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText } from '../decimal-text.ts';
import { currencySchema, figureTableSchema } from '../figures.ts';
import {
  decliningBalanceSchema,
  straightLineSchema,
  sumOfYearsDigitsSchema,
  taxTableSchema,
} from '../tools/depreciation-method.ts';
import { depreciationScheduleSchema, toWorkedSchedule } from '../tools/worked-schedule.ts';
import { calculationQuery, leafId, leafName, namingFields, type WorkingOptions } from './calculation.ts';

const bodySchema = z.strictObject({
  currency: currencySchema,
  method: z.discriminatedUnion('name', [
    straightLineSchema,
    sumOfYearsDigitsSchema,
    decliningBalanceSchema,
    taxTableSchema,
    z.strictObject({
      name: z.literal('units-of-production'),
      unit: z.enum(['h', 'piece']),
      lifeUnits: decimalText,
      unitsBefore: decimalText.exactOptional(),
      unitsByYear: z.array(decimalText).max(200),
    }),
  ]),
  asset: z.strictObject({
    id: leafId,
    name: leafName,
    cost: decimalText,
    salvage: decimalText,
    lifeYears: decimalText.exactOptional(),
    ageYears: decimalText.exactOptional(),
    monthsInFirstYear: decimalText.exactOptional(),
    firstYear: z.number().int().exactOptional(),
    disposal: z
      .strictObject({ year: z.number().int(), months: decimalText, proceeds: decimalText })
      .exactOptional(),
  }),
});

const answerSchema = depreciationScheduleSchema.extend({ figures: figureTableSchema });

/** @throws CostingInputError */
export function workOutDepreciationSchedule(
  { currency, method, asset }: z.output<typeof bodySchema>,
  options: WorkingOptions,
): z.output<typeof answerSchema> {
  const schedule = namingFields(
    (field) =>
      field.startsWith('depreciation.') ? field.replace('depreciation.', 'method.') : `asset.${field}`,
    () => scheduleOf(method, asset, { currency }),
  );
  const table = new FigureTableBuilder(options);
  return { ...toWorkedSchedule(schedule, table), figures: table.table() };
}

const body: z.input<typeof bodySchema> = {
  currency: 'EUR',
  method: { name: 'declining-balance', factor: '2', hasSwitch: true },
  asset: { id: 'saw', name: 'Panel saw', cost: '2400', salvage: '300', lifeYears: '10' },
};

export const depreciationSchedule = defineContract({
  name: 'depreciation-schedule',
  method: 'POST',
  path: '/api/calculations/depreciation-schedule',
  summary: 'How something is written off, year by year',
  description:
    "Straight line, declining balance, sum of the years' digits, units of production or a published tax table; second-hand, part years and disposal. How tax treats it is for your accountant to say.",
  tag: 'calculations',
  roles: 'anyone',
  query: calculationQuery,
  body: bodySchema,
  answer: answerSchema,
  example: { body, answer: workOutDepreciationSchedule(bodySchema.parse(body), { withDerivations: true }) },
});
