/** One way to cut one stock piece: which parts (ascending indices) and how many of each. */
export interface Pattern {
  readonly stock: number;
  readonly parts: readonly number[];
  readonly counts: readonly number[];
  /** Stock less worth of its offcuts, in steps of money. */
  readonly cost: number;
}

/** A choice of patterns: each with the number of pieces cut so. */
export type PatternChoice<P extends Pattern = Pattern> = { readonly pattern: P; readonly count: number }[];

/** What pricing finds for one stock piece at the prices given. */
export interface Priced<P extends Pattern> {
  /**
   * No pattern of this stock is worth more, parts at their prices + offcuts at their worth; or what was the least of
   * interest.
   */
  readonly most: number;
  /** The best found, and others worth more than the least of interest that share few parts with it. */
  readonly patterns: readonly P[];
}

/** Finds the pattern of each stock piece worth most at given prices of parts. */
export interface PatternPricer<P extends Pattern = Pattern> {
  /**
   * @param most how many of each part a pattern may hold
   * @param least what a pattern of each stock must be worth more than to be of interest
   * @param isRough good patterns quickly are enough: the most may come out as infinite
   */
  price(
    prices: Float64Array,
    most: readonly number[],
    least: readonly number[],
    isRough: boolean,
  ): Priced<P>[];
}

/** What a pattern is called, so that the same is not kept twice. */
export function nameOf({ stock, parts, counts }: Pattern): string {
  return `${stock}:${parts.map((part, index) => `${part}x${counts[index]}`).join(',')}`;
}

export function costOf(choice: PatternChoice): number {
  return choice.reduce((sum, { pattern, count }) => sum + pattern.cost * count, 0);
}
