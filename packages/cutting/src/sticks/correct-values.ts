import type { ExactInstance } from '../instance/exact-instance.ts';
import type { Pattern, PatternChoice } from '../patterns/pattern.ts';
import type { SearchWatch } from '../search-limits.ts';
import type { Generator } from '../seeded-generator.ts';
import { CoarseKnapsack } from './coarse-knapsack.ts';
import { stickPattern, type WorthOfRest } from './stick-pricer.ts';

export interface ValueCorrection {
  readonly instance: ExactInstance;
  readonly quantities: readonly number[];
  readonly available: readonly number[];
  readonly random: Generator;
  readonly watch: SearchWatch;
  readonly worthOfRest: WorthOfRest | null;
  /** How many whole plans are tried. */
  readonly tries: number;
  /** Share of all time after which it ends. */
  readonly timeShare: number;
  /** Takes each plan; true where none better is needed. */
  readonly offer: (choice: PatternChoice) => boolean;
}

const SPREAD = 1.5;

/** One stick for what is left: of every stock that has some, the filling that comes cheapest for its length. */
function nextStick(
  { instance, worthOfRest }: ValueCorrection,
  knapsack: CoarseKnapsack,
  available: readonly number[],
): { pattern: Pattern; waste: number } | null {
  let best: { pattern: Pattern; waste: number; rate: number } | null = null;
  instance.stocks.forEach((stock, index) => {
    if ((available[index] ?? 0) === 0) return;
    const { counts } = knapsack.fill(stock.length);
    const pattern = stickPattern(instance, index, counts, worthOfRest);
    const used = pattern.parts.reduce(
      (sum, part, at) => sum + (pattern.counts[at] ?? 0) * (instance.parts[part]?.length ?? 0),
      0,
    );
    const rate = pattern.cost / used;
    if (used > 0 && (best === null || rate < best.rate)) best = { pattern, waste: stock.length - used, rate };
  });
  return best;
}

/**
 * Sequential value correction (Belov, Scheithauer 2007, INFORMS J. Computing 19(1), after Mukhacheva; from memory):
 * plans stick by stick, each the filling worth most at pseudo-values of the parts, which rise for parts that ended up
 * in wasteful sticks, so that the next plan cuts them earlier.
 */
export function correctValues(search: ValueCorrection): void {
  const { instance, quantities, random } = search;
  const lengths = instance.parts.map(({ length }) => length);
  const longest = Math.max(...instance.stocks.map(({ length }) => length));
  const knapsack = new CoarseKnapsack(lengths, longest);
  const values = Float64Array.from(lengths);
  for (let attempt = 0; attempt < search.tries; attempt += 1) {
    const left = [...quantities];
    const available = [...search.available];
    const choice: { pattern: Pattern; count: number }[] = [];
    const power = 1.01 + 0.03 * random();
    while (left.some((quantity) => quantity > 0)) {
      if (search.watch.isUp(search.timeShare)) return;
      knapsack.setValues(values, left);
      const next = nextStick(search, knapsack, available);
      if (next === null) break;
      const { pattern, waste } = next;
      const times = pattern.parts.map((part, at) =>
        Math.floor((left[part] ?? 0) / (pattern.counts[at] ?? 1)),
      );
      const count = Math.max(1, Math.min(available[pattern.stock] ?? 0, ...times));
      const held = instance.stocks[pattern.stock]?.length ?? 1;
      pattern.parts.forEach((part, at) => {
        const before = left[part] ?? 0;
        const used = pattern.counts[at] ?? 1;
        left[part] = before - used * count;
        const spread = 1 / SPREAD + (SPREAD - 1 / SPREAD) * random();
        const weight = (spread * ((quantities[part] ?? 0) + before)) / (used * count);
        const corrected = ((lengths[part] ?? 1) ** power * held) / Math.max(1, held - waste);
        values[part] = (weight * (values[part] ?? 0) + corrected) / (weight + 1);
      });
      available[pattern.stock] = (available[pattern.stock] ?? 0) - count;
      choice.push({ pattern, count });
    }
    if (left.every((quantity) => quantity === 0) && search.offer(choice)) return;
  }
}
