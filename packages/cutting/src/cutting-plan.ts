/** A part's place: the lower-left corner on the whole stock piece, trims included, as decimal text. */
export interface Cut {
  readonly part: string;
  /** Along the stock's length. */
  readonly x: string;
  /** Along the stock's width; sheets only. */
  readonly y?: string;
  /** It lies across: its length runs along y. */
  readonly turned?: boolean;
}

/** What is left as one piece, edge to edge. */
export interface Offcut {
  readonly x: string;
  readonly y?: string;
  readonly length: string;
  readonly width?: string;
}

/** How one stock piece is cut, and how many are cut so. */
export interface Layout {
  readonly stock: string;
  readonly count: number;
  readonly cuts: readonly Cut[];
  readonly offcuts: readonly Offcut[];
}

/**
 * Why the search ended. `proof`: nothing better exists. `work`: the work given was done; the same input gives the same
 * plan. `clock`: the time was up first, so that a faster machine may find a better plan.
 */
export type SearchEnd = 'proof' | 'work' | 'clock';

export interface CuttingPlan {
  /** `optimal` where it is proven. */
  readonly status: 'optimal' | 'feasible';
  /** What the stock used costs. */
  readonly cost: string;
  /** What the parts cut are worth; with `max-value` only. */
  readonly value?: string;
  /**
   * No plan costs less; with `max-value`, none is worth more. With preferences, of cost + price of kinds - worth of
   * offcuts.
   */
  readonly bound: string;
  /** Cost / bound - 1, with `max-value` bound / value - 1; 0 where both are 0, null where only the bound is. */
  readonly gap: string | null;
  /** With preferences: cost + price of kinds - worth of offcuts, which the search made small. */
  readonly weighed?: string;
  readonly endedBy: SearchEnd;
  readonly layouts: readonly Layout[];
}
