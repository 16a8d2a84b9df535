import type { Decimal } from '@scantling/decimals';
import { newScores, pertQuantile, type Scores, scoreAll } from './pert-quantile.ts';

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

/** Fills the values below which shares u of the values lie, for ends at 0 and 1. */
export type StandardQuantile = (out: Float64Array, uniforms: Float64Array, scores: Scores) => void;

export function standardQuantile(shape: Shape, likely: number): StandardQuantile {
  if (shape === 'pert') return pertQuantile(likely).fill;
  return (out, uniforms) => {
    for (let at = 0; at < out.length; at += 1) {
      const u = uniforms[at] ?? 0;
      out[at] = u < likely ? Math.sqrt(u * likely) : 1 - Math.sqrt((1 - u) * (1 - likely));
    }
  };
}

/** The values below which shares of the values lie, as the simulation draws them. */
export function spreadQuantiles(spread: Spread, shares: readonly number[]): number[] {
  const uniforms = Float64Array.from(shares);
  const scores = newScores(uniforms.length);
  scoreAll(uniforms, scores);
  const standard = new Float64Array(uniforms.length);
  standardQuantile(spread.shape, likelyPlace(spread))(standard, uniforms, scores);
  const [low, width] = [spread.low.toNumber(), spread.high.minus(spread.low).toNumber()];
  return [...standard].map((place) => low + width * place);
}
