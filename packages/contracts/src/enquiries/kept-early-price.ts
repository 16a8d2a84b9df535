import { z } from 'zod';
import { moneyText } from '../decimal-text.ts';
import { currencySchema } from '../figures.ts';
import { calendarDate } from '../record.ts';
import {
  earlyPriceInputSchema,
  exampleEarlyPriceInput,
  workedEarlyPriceSchema,
  workOutEarlyPrice,
} from './worked-early-price.ts';

/** An early price as it was given, in short; it never changes. */
export const keptEarlyPriceSchema = z
  .strictObject({
    number: z.number().int(),
    givenOn: calendarDate,
    currency: currencySchema,
    low: moneyText,
    likely: moneyText,
    high: moneyText,
    /** Names of the past pieces it was scaled from. */
    from: z.array(z.string()),
    note: z.string(),
  })
  .meta({ id: 'KeptEarlyPrice' });
export type KeptEarlyPrice = z.output<typeof keptEarlyPriceSchema>;

/** The same with what it rests on and all its figures, as they were. */
export const frozenEarlyPriceSchema = keptEarlyPriceSchema
  .extend({ input: earlyPriceInputSchema, worked: workedEarlyPriceSchema })
  .meta({ id: 'FrozenEarlyPrice' });

const worked = workOutEarlyPrice(exampleEarlyPriceInput, { withDerivations: true });
const amount = (id: string) => worked.figures[id]?.value ?? '0';

export const exampleKeptEarlyPrice: KeptEarlyPrice = {
  number: 1,
  givenOn: '2026-03-03',
  currency: 'EUR',
  low: amount(worked.low.price),
  likely: amount(worked.likely.price),
  high: amount(worked.high.price),
  from: exampleEarlyPriceInput.pieces.map(({ name }) => name),
  note: 'told on the telephone',
};
export const exampleFrozenEarlyPrice = { ...exampleKeptEarlyPrice, input: exampleEarlyPriceInput, worked };
