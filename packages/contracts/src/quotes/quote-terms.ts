import { DUE_TIMES, PRICE_MODES, QUOTE_KINDS, QUOTE_STATES } from '@scantling/quoting';
import { z } from 'zod';
import { boundedDecimal } from '../bounded-decimal.ts';
import { moneyText, shareText } from '../decimal-text.ts';
import { writtenText } from '../written-text.ts';

/** Id of a line, tax or part within one quote, given by whoever writes it. */
export const partId = z
  .string()
  .regex(/^[\w.-]{1,40}$/)
  .meta({ examples: ['line-1'] });

export const quoteStateSchema = z.enum(QUOTE_STATES);
export const quoteKindSchema = z.enum(QUOTE_KINDS);
export const priceModeSchema = z.enum(PRICE_MODES);

export const lineChoiceSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('included') }),
    z.strictObject({ kind: z.literal('option') }),
    z.strictObject({
      kind: z.literal('alternate'),
      group: z.string().trim().min(1).max(80),
      /** The one of its group that is taken where nothing else is chosen. */
      isStandard: z.boolean(),
    }),
  ])
  .meta({ id: 'LineChoice' });

export const discountSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('share'), share: shareText }),
    z.strictObject({ kind: z.literal('amount'), amount: moneyText }),
  ])
  .meta({ id: 'QuoteDiscount' });

export const scheduledPartFields = {
  id: partId,
  label: z.string().trim().min(1).max(120),
  /** Share of the total with tax; all parts add up to 1. */
  share: shareText,
};
export const scheduledPartSchema = z.strictObject(scheduledPartFields);
export const dueTimeSchema = z.enum(DUE_TIMES);

/** An amount that may be a deduction, in the quote's currency, as text. */
export const signedMoneyText = writtenText({
  pattern: /^-?\d{1,12}(?:\.\d{1,6})?$/,
  message: 'is not an amount of money',
  mend: 'Write it as text with digits and a point, such as "1249.90", or "-50" for a deduction.',
  example: '1249.90',
});

export const lineQuantityText = boundedDecimal({ digits: 9, places: 6, example: '2.5' });
export const chosenSchema = z.array(partId).max(200);
export const MOST_LINES = 200;
