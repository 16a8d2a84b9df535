import { Decimal, ONE } from '@scantling/decimals';
import type { Crossing, Probe, Step } from './solve-question.ts';

export type Prober = (value: Decimal) => Probe;

const MOST_TURNS = 250;
/** A bracket narrower than this share of its place cannot be told from a point. */
const NARROW = new Decimal('1e-18');
/** A gap this much smaller than what it began with is none. */
const NOTHING = new Decimal('1e-12');
const PLACES = [0, 1, 2, 3, 4, 6, 8, 10, 12, 15, 20];

function isNarrow(low: Decimal, high: Decimal, isWhole: boolean): boolean {
  const width = high.minus(low);
  return isWhole ? width.lte(1) : width.lte(NARROW.times(Decimal.max(low.abs(), high.abs(), NARROW)));
}

/** Where the straight line between two probes meets 0, kept off the ends. */
function meeting(low: Probe, high: Probe): Decimal {
  const [a, b] = [low.gap ?? ONE, high.gap ?? ONE];
  return low.value.minus(a.times(high.value.minus(low.value)).div(b.minus(a)));
}

function middle(low: Probe, high: Probe): Decimal {
  return low.value.plus(high.value).div(2);
}

/**
 * Closes in on the place between two probes whose gaps have opposite signs: by the straight line and by halves in
 * turn. @returns a crossing, a step where the result jumps over the target, or null where it has no answer between
 */
export function closeIn(low: Probe, high: Probe, probe: Prober, isWhole: boolean): Crossing | Step | null {
  const began = (low.gap ?? ONE).abs().plus((high.gap ?? ONE).abs());
  let [left, right] = [low, high];
  for (let turn = 0; turn < MOST_TURNS && !isNarrow(left.value, right.value, isWhole); turn += 1) {
    const guess = turn % 2 === 0 ? meeting(left, right) : middle(left, right);
    const inside = guess.gt(left.value) && guess.lt(right.value) ? guess : middle(left, right);
    const floor = inside.floor();
    const whole = floor.gt(left.value) ? floor : floor.plus(1);
    const next = probe(isWhole ? whole : inside);
    if (next.gap === null) return null;
    if (next.gap.isZero()) return plateau(left, shortest(next, left, right, probe), right, probe, isWhole);
    if (next.gap.isNegative() === left.gap?.isNegative()) left = next;
    else right = next;
  }
  const [nearer] = [left, right].sort((a, b) => (a.gap ?? ONE).abs().cmp((b.gap ?? ONE).abs()));
  if (nearer === undefined) return null;
  if (nearer.gap?.abs().lte(began.times(NOTHING)) === true) {
    const at = shortest(nearer, low, high, probe);
    return { at, from: at.value, to: at.value };
  }
  const widest = (left.gap ?? ONE).abs().plus((right.gap ?? ONE).abs());
  // Beyond all bounds on both sides: a division by what goes through 0, not a step.
  if (widest.gt(began.times(1000))) return null;
  return {
    below: outward(left, Decimal.ROUND_FLOOR, probe),
    above: outward(right, Decimal.ROUND_CEIL, probe),
  };
}

/** The same side of a step at a value people can read, where it is as good. */
function outward(
  side: Probe,
  rounding: typeof Decimal.ROUND_FLOOR | typeof Decimal.ROUND_CEIL,
  probe: Prober,
): Probe {
  const short = probe(side.value.toSignificantDigits(12, rounding));
  return short.gap !== null && side.gap !== null && short.gap.eq(side.gap) ? short : side;
}

/** The value with the fewest decimal places that leaves no more than the one found. */
function shortest(found: Probe, low: Probe, high: Probe, probe: Prober): Probe {
  const enough = Decimal.max((found.gap ?? ONE).abs(), (low.gap ?? ONE).abs().times('1e-25'));
  for (const places of PLACES) {
    const value = found.value.toDecimalPlaces(places);
    if (value.eq(found.value)) return found;
    if (value.lte(low.value) || value.gte(high.value)) continue;
    const short = probe(value);
    if (short.gap?.abs().lte(enough) === true) return short;
  }
  return found;
}

/** The edge of the values that do as well as the one found, towards a value that does not. */
function edge(inside: Probe, outside: Probe, probe: Prober, isWhole: boolean): Decimal {
  let [good, bad] = [inside.value, outside.value];
  const wide = good.minus(bad).abs().times('1e-12');
  while (
    good
      .minus(bad)
      .abs()
      .gt(isWhole ? 1 : wide)
  ) {
    const half = good.plus(bad).div(2);
    const next = isWhole ? half.round() : half;
    if (next.eq(good) || next.eq(bad)) break;
    if (probe(next).gap?.isZero() === true) good = next;
    else bad = next;
  }
  return good;
}

/** A crossing, with all values around it that do as well. */
export function plateau(left: Probe, at: Probe, right: Probe, probe: Prober, isWhole: boolean): Crossing {
  const shift = isWhole ? ONE : right.value.minus(left.value).times('1e-15');
  const near = (value: Decimal) => probe(value).gap?.isZero() === true;
  const isAlone = !near(at.value.minus(shift)) && !near(at.value.plus(shift));
  if (isAlone) return { at, from: at.value, to: at.value };
  return {
    at,
    from: left.gap?.isZero() === true ? left.value : edge(at, left, probe, isWhole),
    to: right.gap?.isZero() === true ? right.value : edge(at, right, probe, isWhole),
  };
}
