import type { ExactInstance } from '../instance/exact-instance.ts';
import type { Pattern, PatternPricer, Priced } from '../patterns/pattern.ts';
import { CoarseKnapsack } from './coarse-knapsack.ts';
import { StickKnapsack } from './stick-knapsack.ts';

/** What the rest of a stick is worth, in steps of money; never less for a longer rest. */
export type WorthOfRest = (stock: number, rest: number) => number;

/** The pattern of a stick from how many of each part it holds; its cost is the stick's less what its rest is worth. */
export function stickPattern(
  { stocks, parts }: ExactInstance,
  stock: number,
  counts: ArrayLike<number>,
  worthOfRest: WorthOfRest | null,
): Pattern {
  const held = parts.flatMap((_, part) => ((counts[part] ?? 0) > 0 ? [part] : []));
  const used = held.reduce((sum, part) => sum + (counts[part] ?? 0) * (parts[part]?.length ?? 0), 0);
  const piece = stocks[stock];
  const rest = (piece?.length ?? 0) - used;
  return {
    stock,
    parts: held,
    counts: held.map((part) => counts[part] ?? 0),
    cost: (piece?.cost ?? 0) - (worthOfRest?.(stock, rest) ?? 0),
  };
}

const MOST_OTHERS = 12;

/** What is left of the parts when a pattern has been cut as often as they allow, once at least. */
function without(most: readonly number[], { parts, counts }: Pattern): number[] {
  const left = [...most];
  const times = parts.reduce(
    (fewest, part, at) => Math.min(fewest, Math.floor((left[part] ?? 0) / (counts[at] ?? 1))),
    Number.POSITIVE_INFINITY,
  );
  parts.forEach((part, at) => {
    left[part] = Math.max(0, (left[part] ?? 0) - Math.max(1, times) * (counts[at] ?? 0));
  });
  return left;
}

/**
 * Pricing of sticks by one knapsack per stock length. Where the table is large, a coarse one is asked first, and the
 * exact one as soon as that finds nothing more.
 */
export class StickPricer implements PatternPricer {
  private readonly knapsack: StickKnapsack;
  private readonly coarse: CoarseKnapsack;

  constructor(
    private readonly instance: ExactInstance,
    private readonly worthOfRest: WorthOfRest | null,
  ) {
    const longest = Math.max(...instance.stocks.map(({ length }) => length));
    const lengths = instance.parts.map(({ length }) => length);
    this.knapsack = new StickKnapsack(lengths, longest);
    this.coarse = new CoarseKnapsack(lengths, longest);
  }

  price(
    prices: Float64Array,
    most: readonly number[],
    least: readonly number[],
    isRough: boolean,
  ): Priced<Pattern>[] {
    const { instance, knapsack, worthOfRest } = this;
    knapsack.setValues(prices, most);
    if (worthOfRest === null && knapsack.isLarge()) {
      const rough = instance.stocks.map((_, stock) => ({
        most: Number.POSITIVE_INFINITY,
        patterns: this.unlike(stock, prices, most, least[stock] ?? 0),
      }));
      if (isRough || rough.some(({ patterns }) => patterns.length > 0)) return rough;
    }
    return instance.stocks.map((stock, index) => {
      const rest = worthOfRest === null ? 0 : this.bestRest(index, stock.length, worthOfRest);
      const filling = knapsack.fill(stock.length - rest, least[index] ?? 0);
      const pattern = stickPattern(instance, index, filling.counts, worthOfRest);
      const worth = worthOfRest?.(index, rest) ?? 0;
      const others =
        pattern.parts.length === 0
          ? []
          : this.unlike(index, prices, without(most, pattern), least[index] ?? 0);
      return { most: filling.most + worth, patterns: pattern.parts.length > 0 ? [pattern, ...others] : [] };
    });
  }

  /** Patterns one after the other, each from the parts that those before leave over. */
  private unlike(stock: number, prices: Float64Array, most: readonly number[], least: number): Pattern[] {
    const found: Pattern[] = [];
    let left = most;
    while (found.length < MOST_OTHERS) {
      this.coarse.setValues(prices, left);
      const { value, counts } = this.coarse.fill(this.instance.stocks[stock]?.length ?? 0);
      if (value <= least * (1 + 1e-7) + 1e-9) break;
      const pattern = stickPattern(this.instance, stock, counts, this.worthOfRest);
      found.push(pattern);
      left = without(left, pattern);
    }
    return found;
  }

  /** How much of a stick is best left over. */
  private bestRest(stock: number, length: number, worthOfRest: WorthOfRest): number {
    const table = this.knapsack.table();
    if (table === null) return 0;
    let [bestRest, bestWorth] = [0, Number.NEGATIVE_INFINITY];
    for (let rest = 0; rest < length; rest += 1) {
      const worth = (table[length - rest] ?? 0) + worthOfRest(stock, rest);
      if (worth > bestWorth + 1e-12) [bestRest, bestWorth] = [rest, worth];
    }
    return bestRest;
  }
}
