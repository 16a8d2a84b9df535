import { type Decimal, type DecimalLike, ONE } from '@scantling/decimals';
import type { Amount } from './amount.ts';
import type { Currency } from './currency.ts';
import { positive } from './input-error.ts';

/** One unit of `from` cost `rate` units of `to` from this day on, until a later rate of the same pair. */
export interface ExchangeRate {
  readonly from: Currency;
  readonly to: Currency;
  /** ISO 8601 date, YYYY-MM-DD. */
  readonly date: string;
  readonly rate: DecimalLike;
}

/** A rate as it was found, with what it rests on. */
export interface FoundRate {
  readonly rate: Decimal;
  /** Date of the entry used; null when both currencies are the same. */
  readonly date: string | null;
  /** True when the entry names the pair the other way round. */
  readonly isInverse: boolean;
}

/** Thrown when no rate of a pair is known on a date. */
export class NoExchangeRateError extends Error {
  readonly code = 'no-exchange-rate';
  constructor(
    readonly from: Currency,
    readonly to: Currency,
    readonly date: string,
  ) {
    super(`no exchange rate from ${from} to ${to} on ${date}: enter one dated ${date} or earlier`);
    this.name = 'NoExchangeRateError';
  }
}

/**
 * The latest rate of the pair dated on or before the date. An entry of the pair wins over one of the pair
 * the other way round with the same date, which is used as 1 / rate; no third currency is gone through.
 * @param date ISO 8601 date, YYYY-MM-DD
 * @throws NoExchangeRateError, MoneyInputError for a rate that is not above 0
 */
export function rateOn(
  rates: readonly ExchangeRate[],
  from: Currency,
  to: Currency,
  date: string,
): FoundRate {
  if (from === to) return { rate: ONE, date: null, isInverse: false };
  let latest: (ExchangeRate & { isInverse: boolean }) | undefined;
  for (const entry of rates) {
    const isDirect = entry.from === from && entry.to === to;
    const isInverse = entry.from === to && entry.to === from;
    if ((!isDirect && !isInverse) || entry.date > date) continue;
    const isLater = latest === undefined || entry.date > latest.date;
    if (isLater || (entry.date === latest?.date && isDirect && latest.isInverse))
      latest = { ...entry, isInverse };
  }
  if (latest === undefined) throw new NoExchangeRateError(from, to, date);
  const rate = positive('rate', latest.rate);
  return { rate: latest.isInverse ? ONE.div(rate) : rate, date: latest.date, isInverse: latest.isInverse };
}

/**
 * The amount in another currency at the rate of a date, not rounded.
 * @throws NoExchangeRateError
 */
export function exchange(
  { value, currency }: Amount,
  to: Currency,
  rates: readonly ExchangeRate[],
  date: string,
): Amount {
  return { value: value.times(rateOn(rates, currency, to, date).rate), currency: to };
}
