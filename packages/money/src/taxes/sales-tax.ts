import { type Decimal, type DecimalLike, ZERO } from '@scantling/decimals';
import { roundToMinorUnit } from '../amount.ts';
import type { Currency } from '../currency.ts';
import { fraction, number } from '../input-error.ts';

/** Whether tax is rounded on each item or once on the document; the seller chooses and keeps to it. */
export type SalesTaxBasis = 'item' | 'invoice';

/**
 * US sales tax on prices without tax: carried to the third decimal and rounded up when that exceeds four, which is half
 * away from zero (Rhode Island Gen. Laws 44-18.1-25, Streamlined agreement).
 * @throws MoneyInputError
 */
export function salesTax(
  prices: readonly DecimalLike[],
  rate: DecimalLike,
  currency: Currency,
  basis: SalesTaxBasis,
): Decimal {
  const share = fraction('rate', rate);
  const read = prices.map((price, at) => number(`prices.${at}`, price));
  const round = (value: Decimal) => roundToMinorUnit(value.times(share), currency);
  if (basis === 'invoice') return round(read.reduce((sum, price) => sum.plus(price), ZERO));
  return read.reduce((sum, price) => sum.plus(round(price)), ZERO);
}
