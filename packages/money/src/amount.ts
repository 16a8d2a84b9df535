import { type Decimal, type DecimalLike, roundHalfAway, roundHalfEven, ZERO } from '@scantling/decimals';
import { type Currency, CurrencyMismatchError, minorUnits } from './currency.ts';
import { number } from './input-error.ts';

/** An amount of money. Its value keeps every place until a named place rounds it. */
export interface Amount {
  readonly value: Decimal;
  readonly currency: Currency;
}

/** @throws MoneyInputError when the value is no number */
export function amount(value: DecimalLike, currency: Currency): Amount {
  return { value: number('amount', value), currency };
}

/** `half-away` is the product's own rounding; `half-even` reproduces documents that were made with it. */
export type MoneyRounding = 'half-away' | 'half-even';

/** To the minor unit of the currency (ISO 4217): cents for EUR, whole yen for JPY. */
export function roundToMinorUnit(
  value: DecimalLike,
  currency: Currency,
  rounding: MoneyRounding = 'half-away',
): Decimal {
  const round = rounding === 'half-away' ? roundHalfAway : roundHalfEven;
  return round(value, minorUnits(currency));
}

/** The smallest amount the currency can pay. */
export function minorUnit(currency: Currency): Decimal {
  return ZERO.plus(10).pow(-minorUnits(currency));
}

/**
 * The amounts added.
 * @param currency of the sum, which an empty list needs
 * @throws CurrencyMismatchError for an amount in another currency
 */
export function sumAmounts(amounts: readonly Amount[], currency: Currency, where = 'sum'): Amount {
  const value = amounts.reduce((sum, one) => {
    if (one.currency !== currency) throw new CurrencyMismatchError(currency, one.currency, where);
    return sum.plus(one.value);
  }, ZERO);
  return { value, currency };
}
