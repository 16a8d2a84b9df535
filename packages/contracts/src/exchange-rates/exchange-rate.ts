import { z } from 'zod';
import { boundedDecimal } from '../bounded-decimal.ts';
import { currencySchema } from '../figures.ts';
import { calendarDate, moment, recordId } from '../record.ts';

/** One unit of `from` costs `rate` units of `to` from that day on. */
export const exchangeRateFields = z.strictObject({
  onDate: calendarDate,
  from: currencySchema,
  to: currencySchema,
  rate: boundedDecimal({ digits: 10, places: 10, isPositive: true, example: '0.92' }),
  source: z.string().trim().min(1).max(200).meta({ description: 'Where the rate was read' }),
});

export const exchangeRateSchema = z
  .strictObject({ id: recordId, ...exchangeRateFields.shape, createdAt: moment })
  .meta({ id: 'ExchangeRate' });

export const exampleExchangeRateFields = {
  onDate: '2026-03-01',
  from: 'USD',
  to: 'EUR',
  rate: '0.92',
  source: 'entered from the bank statement',
} as const;
export const exampleExchangeRate = {
  id: '0193f6a0-7c11-7000-8000-000000000030',
  ...exampleExchangeRateFields,
  createdAt: '2026-03-01T09:30:00.000Z',
} as const;
