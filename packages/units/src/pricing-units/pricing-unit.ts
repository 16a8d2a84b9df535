import type { BaseUnit } from '../unit.ts';

/** What a pricing unit measures. Units of one dimension convert into each other, except counts. */
export type Dimension = 'board-measure' | 'volume' | 'length' | 'area' | 'count' | 'liquid' | 'mass' | 'time';

/** A unit a price is per. */
export interface PricingUnit {
  /** Kebab-case and the file's name. */
  readonly id: string;
  readonly label: string;
  readonly symbol: string;
  /** UN/ECE Recommendation 20 code; for packages the Recommendation 21 code behind an X, as invoices carry it. */
  readonly code: string;
  /** The unit a figure carries for a quantity priced so. */
  readonly baseUnit: BaseUnit;
  readonly dimension: Dimension;
  /** Exact decimal: how many of the dimension's base (bd ft, m3, m, one, m2, l, kg, h) one unit is. */
  readonly factor: string;
  /** How imported files write it; small letters, read without spaces, dots and dashes. */
  readonly aliases: readonly string[];
}
