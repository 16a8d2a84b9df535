import type { DecimalLike } from '@scantling/decimals';

/** A length, an area's side or an amount: a decimal number, best as text; at most six places. */
export type Amount = DecimalLike;

/** Something to cut from, in the instance's unit of length. */
export interface StockPiece {
  readonly id: string;
  /** Along x, which is the way the grain runs. */
  readonly length: Amount;
  /** Along y; sheets only. */
  readonly width?: Amount;
  /** What one piece costs. */
  readonly cost: Amount;
  /** Pieces there are; any number where absent. */
  readonly available?: number;
  /** It is a leftover on hand. */
  readonly offcut?: boolean;
  /** Taken off every edge of this stock (both ends of a stick), the cut included; else the instance's trim. */
  readonly trim?: Amount;
}

/** A part to cut, at the size the saw leaves it. */
export interface PartDemand {
  readonly id: string;
  readonly length: Amount;
  /** Sheets only. */
  readonly width?: Amount;
  /** How many are needed; with `max-value` how many may be cut at most. */
  readonly quantity: number;
  /** It may lie across the grain. False where absent. */
  readonly rotatable?: boolean;
  /** What one is worth; with `max-value` only. */
  readonly value?: Amount;
}

/** Wishes at a stated price: the plan's cost counts them beside the stock, its `cost` does not. */
export interface CuttingPreferences {
  /** What one more kind of stock in the plan may cost to be avoided. */
  readonly pricePerKindOfStock?: Amount;
  /** What offcuts are worth that are large enough to be kept. */
  readonly usableOffcuts?: {
    readonly leastLength: Amount;
    /** Sheets only; an offcut may be turned to reach both. */
    readonly leastWidth?: Amount;
    /** Per unit of length of a stick, per unit of area of a sheet. */
    readonly worth: Amount;
  };
}

export const CUTTING_KINDS = ['1d', '2d-guillotine'] as const;
export const CUTTING_OBJECTIVES = ['min-cost', 'max-value'] as const;

/** What is to be cut from what. Sticks (`1d`) have no widths. */
export interface CuttingInstance {
  readonly kind: (typeof CUTTING_KINDS)[number];
  /** `min-cost`: every part, at the least cost. `max-value`: the most valuable choice from limited stock. */
  readonly objective?: (typeof CUTTING_OBJECTIVES)[number];
  /** Width of a cut. It lies between neighbours only: a and b fit in a stick when a + kerf + b <= its length. */
  readonly kerf: Amount;
  /** Taken off every edge of every stock piece, the cut included; 0 where absent. */
  readonly trim?: Amount;
  /**
   * Most directions of cuts that follow one another on a sheet: 2 is sections, then strips. The cuts that free a part
   * from the last strip's waste do not count. Any number where absent.
   */
  readonly stages?: number;
  /** Which way the first cuts of a sheet run: across the length, or along it. Either where absent. */
  readonly firstCut?: 'crosscut' | 'rip';
  readonly stock: readonly StockPiece[];
  readonly parts: readonly PartDemand[];
  readonly preferences?: CuttingPreferences;
}
