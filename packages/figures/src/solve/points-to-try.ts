import { type Decimal, type DecimalLike, decimal, ONE, ZERO } from '@scantling/decimals';
import type { LeafBounds } from '../figure.ts';

// Steps of the square root of 2: up to a million times the value it has, and down to a thousandth.
const ROOT = decimal(2).sqrt();
const STEPS_UP = 40;
const STEPS_DOWN = 20;
const EVEN_STEPS = 40;

/**
 * Values of a leaf at which to try a result, in order: evenly between the ends where both are known, and from the
 * value it has outward by equal ratios. Without a stated end a leaf keeps its sign.
 */
export function pointsToTry(
  now: Decimal,
  bounds: LeafBounds,
  stated: { readonly low?: DecimalLike | undefined; readonly high?: DecimalLike | undefined },
): Decimal[] {
  const least = stated.low ?? bounds.least ?? (now.isNegative() ? undefined : 0);
  const most = stated.high ?? bounds.most ?? (now.isNegative() && !now.isZero() ? 0 : undefined);
  const [low, high] = [least, most].map((end) => (end === undefined ? null : decimal(end)));
  const size = now.isZero() ? ONE : now.abs();
  const sign = now.isNegative() && !now.isZero() ? -1 : 1;
  const outward = [now];
  for (let step = -STEPS_DOWN; step <= STEPS_UP; step += 1)
    outward.push(size.times(ROOT.pow(step)).times(sign));
  const even: Decimal[] = [];
  if (low && high)
    for (let step = 0; step <= EVEN_STEPS; step += 1)
      even.push(low.plus(high.minus(low).times(step).div(EVEN_STEPS)));
  const ends = [...(low ? [low] : []), ...(high ? [high] : [])];
  const inside = [...outward, ...even, ...ends]
    .map((value) => (bounds.isWhole === true ? value.round() : value.toSignificantDigits(20)))
    .filter((value) => (low ?? value).lte(value) && (high ?? value).gte(value));
  const distinct = new Map(inside.map((value) => [(value.isZero() ? ZERO : value).toString(), value]));
  return [...distinct.values()].sort((a, b) => a.cmp(b));
}
