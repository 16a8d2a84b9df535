import { FigureTableBuilder } from '@scantling/figures';
import { quoteTotals as totalsOf } from '@scantling/quoting';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText, positiveDecimalText } from '../decimal-text.ts';
import { currencySchema, figureTableSchema } from '../figures.ts';
import {
  chosenSchema,
  discountSchema,
  lineChoiceSchema,
  MOST_LINES,
  partId,
  priceModeSchema,
  scheduledPartSchema,
} from '../quotes/quote-terms.ts';
import { toWorkedQuoteTotals, workedQuoteTotalsSchema } from '../quotes/worked-quote-totals.ts';
import { taxCategoriesSchema } from '../workshop/tax-categories.ts';
import { calculationQuery, leafName, type WorkingOptions } from './calculation.ts';

const bodySchema = z.strictObject({
  currency: currencySchema,
  /** exclusive: tax is added, in the order of EN 16931. inclusive: the gross is fixed and the tax taken out of it. */
  priceMode: priceModeSchema,
  taxes: taxCategoriesSchema,
  lines: z
    .array(
      z.strictObject({
        id: partId,
        label: leafName,
        quantity: decimalText,
        /** For `priceBase` of them. */
        price: decimalText,
        priceBase: positiveDecimalText.exactOptional(),
        /** The price of a cost sheet: without tax in either mode. */
        isPriceWithoutTax: z.boolean().exactOptional(),
        tax: partId,
        choice: lineChoiceSchema.default({ kind: 'included' }),
      }),
    )
    .max(MOST_LINES),
  /** Options wanted, and alternates in place of the standard one of their group. */
  chosen: chosenSchema.default([]),
  discount: discountSchema.nullable().default(null),
  schedule: z.array(scheduledPartSchema).max(24).default([]),
});

const answerSchema = workedQuoteTotalsSchema.extend({ figures: figureTableSchema });
type Body = z.output<typeof bodySchema>;

/** @throws QuotingInputError */
export function workOutQuoteTotals(given: Body, options: WorkingOptions): z.output<typeof answerSchema> {
  const table = new FigureTableBuilder(options);
  const worked = toWorkedQuoteTotals(totalsOf(given), table);
  return { ...worked, figures: table.table() };
}

const body: z.input<typeof bodySchema> = {
  currency: 'EUR',
  priceMode: 'exclusive',
  taxes: [{ id: 'full', category: 'S', rate: '0.19', name: 'VAT 19 %', exemptionReason: '' }],
  lines: [
    { id: 'bench', label: 'Hall bench', quantity: '2', price: '1310', priceBase: '2', tax: 'full' },
    {
      id: 'cushion',
      label: 'Cushion',
      quantity: '2',
      price: '85',
      tax: 'full',
      choice: { kind: 'option' },
    },
  ],
  chosen: ['cushion'],
  discount: { kind: 'share', share: '0.05' },
  schedule: [
    { id: 'deposit', label: 'Deposit', share: '0.4' },
    { id: 'rest', label: 'On delivery', share: '0.6' },
  ],
};

export const quoteTotals = defineContract({
  name: 'quote-totals',
  method: 'POST',
  path: '/api/calculations/quote-totals',
  summary: 'What a quote comes to',
  description:
    'Lines with the options and alternates chosen, a discount spread over the taxes before tax, tax by category, the total, and the parts it is paid in. Rounds half away from zero to the minor unit: each line, the discount, each tax, each part.',
  tag: 'calculations',
  roles: 'anyone',
  query: calculationQuery,
  body: bodySchema,
  answer: answerSchema,
  example: { body, answer: workOutQuoteTotals(bodySchema.parse(body), { withDerivations: true }) },
});
