import type { Decimal } from '@scantling/decimals';
import { standardPert } from './standard-pert.ts';

/** How values between the least and the greatest are spread around the likely one. */
export const SHAPES = ['pert', 'triangular'] as const;
export type Shape = (typeof SHAPES)[number];

/** Least, likely and greatest, in this order. */
export interface Spread {
  readonly low: Decimal;
  readonly likely: Decimal;
  readonly high: Decimal;
  readonly shape: Shape;
}

/**
 * pert: (a + 4m + b) / 6, the beta distribution with lambda 4 (Malcolm, Roseboom, Clark and Fazar 1959);
 * triangular: (a + m + b) / 3.
 */
export function spreadMean({ low, likely, high, shape }: Spread): Decimal {
  const weight = shape === 'pert' ? 4 : 1;
  return low
    .plus(likely.times(weight))
    .plus(high)
    .div(weight + 2);
}

/** pert: (mu - a)(b - mu) / 7; triangular: (a2 + m2 + b2 - am - ab - mb) / 18. */
export function spreadVariance(spread: Spread): Decimal {
  const { low: a, likely: m, high: b, shape } = spread;
  const mean = spreadMean(spread);
  if (shape === 'pert') return mean.minus(a).times(b.minus(mean)).div(7);
  const squares = a.times(a).plus(m.times(m)).plus(b.times(b));
  return squares.minus(a.times(m)).minus(a.times(b)).minus(m.times(b)).div(18);
}

/** Where the likely value lies between the ends, from 0 to 1; halfway where the ends are one. */
export function likelyPlace({ low, likely, high }: Spread): number {
  return high.eq(low) ? 0.5 : likely.minus(low).div(high.minus(low)).toNumber();
}

/** The value below which a share u of the values lies, for ends at 0 and 1. */
export type StandardQuantile = (u: number) => number;

export function standardQuantile(shape: Shape, likely: number): StandardQuantile {
  if (shape === 'pert') return standardPert(likely);
  return (u) => (u < likely ? Math.sqrt(u * likely) : 1 - Math.sqrt((1 - u) * (1 - likely)));
}

/** The value below which a share u of the values lies. */
export function spreadQuantile(spread: Spread, u: number): number {
  const place = standardQuantile(spread.shape, likelyPlace(spread))(u);
  return spread.low.toNumber() + spread.high.minus(spread.low).toNumber() * place;
}
