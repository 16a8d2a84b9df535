import { type Decimal, type DecimalLike, ZERO } from '@scantling/decimals';
import { minorUnit, roundToMinorUnit } from './amount.ts';
import type { Currency } from './currency.ts';
import { MoneyInputError, notNegative, number } from './input-error.ts';

/**
 * Splits a total by weights into payable shares that add up to it exactly, by largest remainder: each share is cut
 * down to the minor unit, and the units left over go to the largest cut-off parts (the earlier one when equal).
 * @param total payable in the currency; below 0 for a credit
 * @param weights 0 or more, not all 0; a weight of 0 gets nothing
 * @throws MoneyInputError
 */
export function allocate(total: DecimalLike, weights: readonly DecimalLike[], currency: Currency): Decimal[] {
  const whole = number('total', total);
  if (!roundToMinorUnit(whole, currency).eq(whole)) {
    throw new MoneyInputError('total', `is ${whole} ${currency}`, 'round it to the minor unit first');
  }
  const read = weights.map((weight, at) => notNegative(`weights.${at}`, weight));
  const sum = read.reduce((all, weight) => all.plus(weight), ZERO);
  if (sum.isZero()) throw new MoneyInputError('weights', 'are all 0', 'give at least one weight above 0');

  const unit = minorUnit(currency);
  const units = whole.abs().div(unit);
  const exact = read.map((weight) => units.times(weight).div(sum));
  const shares = exact.map((share) => share.floor());
  const left = units.minus(shares.reduce((all, share) => all.plus(share), ZERO)).toNumber();
  const byRemainder = exact
    .map((share, at) => ({ at, remainder: share.minus(share.floor()) }))
    .filter(({ at }) => read[at]?.gt(0))
    .sort((a, b) => b.remainder.cmp(a.remainder) || a.at - b.at);
  const favoured = new Set(byRemainder.slice(0, left).map(({ at }) => at));
  const sign = whole.isNegative() ? -1 : 1;
  return shares.map((share, at) =>
    (favoured.has(at) ? share.plus(1) : share).times(unit).times(sign).plus(ZERO),
  );
}
