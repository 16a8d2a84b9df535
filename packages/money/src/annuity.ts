import { type Decimal, type DecimalLike, ONE } from '@scantling/decimals';
import { MoneyInputError, number, positive } from './input-error.ts';

function growth(
  rate: DecimalLike,
  periods: DecimalLike,
): { rate: Decimal; periods: Decimal; factor: Decimal } {
  const perPeriod = number('rate', rate);
  if (perPeriod.lte(-1))
    throw new MoneyInputError('rate', `is ${perPeriod}`, 'enter a fraction above -1 (5 % is 0.05)');
  const count = positive('periods', periods);
  return { rate: perPeriod, periods: count, factor: perPeriod.plus(1).pow(count) };
}

/**
 * Capital recovery factor i (1 + i)^n / ((1 + i)^n - 1): the payment at each period's end that repays 1; 1 / n at a rate
 * of 0. Textbook formula of engineering economy.
 * @param rate fraction per period
 * @throws MoneyInputError
 */
export function capitalRecoveryFactor(rate: DecimalLike, periods: DecimalLike): Decimal {
  const { rate: i, periods: n, factor } = growth(rate, periods);
  return i.isZero() ? ONE.div(n) : i.times(factor).div(factor.minus(1));
}

/** Present value of 1 paid at the end of each period (OpenStax Managerial Accounting 11.3); n at a rate of 0. */
export function annuityPresentValueFactor(rate: DecimalLike, periods: DecimalLike): Decimal {
  return ONE.div(capitalRecoveryFactor(rate, periods));
}

/** Future value of 1 paid at the end of each period (same section); n at a rate of 0. */
export function annuityFutureValueFactor(rate: DecimalLike, periods: DecimalLike): Decimal {
  const { rate: i, periods: n, factor } = growth(rate, periods);
  return i.isZero() ? n : factor.minus(1).div(i);
}

/** Value after n periods of one sum paid now: sum x (1 + i)^n (same section). */
export function futureValue(sum: DecimalLike, rate: DecimalLike, periods: DecimalLike): Decimal {
  return number('sum', sum).times(growth(rate, periods).factor);
}

/** Value now of one sum paid after n periods: sum / (1 + i)^n. */
export function presentValue(sum: DecimalLike, rate: DecimalLike, periods: DecimalLike): Decimal {
  return number('sum', sum).div(growth(rate, periods).factor);
}
