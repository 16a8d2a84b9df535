import { labourRate as rateOf } from '@scantling/costing';
import { entered, toTable } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText } from '../decimal-text.ts';
import { currencySchema, figureId, figureTableSchema } from '../figures.ts';
import { calculationQuery, leafId, leafName, namingFields, type WorkingOptions } from './calculation.ts';

const bodySchema = z.strictObject({
  currency: currencySchema,
  grade: z.strictObject({
    id: leafId,
    name: leafName,
    payPerHour: decimalText,
    burden: decimalText,
    productiveShare: decimalText,
    isOwner: z.boolean(),
  }),
});

const answerSchema = z.strictObject({
  pay: figureId,
  paidHour: figureId,
  perHour: figureId,
  figures: figureTableSchema,
});

/** @throws CostingInputError */
export function workOutLabourRate(
  { currency, grade }: z.output<typeof bodySchema>,
  options: WorkingOptions,
): z.output<typeof answerSchema> {
  const { pay, paidHour, perHour } = namingFields(
    (field) => `grade.${field}`,
    () => rateOf(grade, { currency, source: entered() }),
  );
  const { ids, figures } = toTable({ pay, paidHour, perHour }, options);
  return { ...ids, figures };
}

const body: z.input<typeof bodySchema> = {
  currency: 'EUR',
  grade: {
    id: 'joiner',
    name: 'Joiner',
    payPerHour: '21',
    burden: '0.24',
    productiveShare: '0.8',
    isOwner: false,
  },
};

export const labourRate = defineContract({
  name: 'labour-rate',
  method: 'POST',
  path: '/api/calculations/labour-rate',
  summary: 'What an hour of work costs',
  description: 'Pay x (1 + burden) / productive share.',
  tag: 'calculations',
  roles: 'anyone',
  query: calculationQuery,
  body: bodySchema,
  answer: answerSchema,
  example: { body, answer: workOutLabourRate(bodySchema.parse(body), { withDerivations: true }) },
});
