import type { PriceTerms } from '@scantling/costing';
import type { DecimalLike } from '@scantling/decimals';
import type { Source } from '@scantling/figures';
import type { Currency } from '@scantling/money';

/** What the cost of a past piece is made of; together they are its cost of production. */
export const EARLY_PRICE_CLASSES = [
  'materials',
  'boughtIn',
  'labour',
  'machines',
  'overhead',
  'other',
] as const;
export type EarlyPriceClass = (typeof EARLY_PRICE_CLASSES)[number];

/** What a class of cost grows with: an overall measure of the piece, a count, the hours, or nothing. */
export const SCALE_BASES = ['volume', 'area', 'length', 'count', 'hours', 'none'] as const;
export type ScaleBasis = (typeof SCALE_BASES)[number];

/** factor = (asked measure / past measure) ^ exponent; 1 is in proportion, below 1 less than in proportion. */
export interface ScaleRule {
  readonly basis: ScaleBasis;
  readonly exponent: DecimalLike;
}
export type Scaling = Readonly<Record<EarlyPriceClass, ScaleRule>>;

/** Overall sizes in mm. */
export interface OverallSize {
  readonly length: DecimalLike;
  readonly width: DecimalLike;
  readonly height: DecimalLike;
}

/** A piece that was costed, for one piece; amounts in the currency of the whole input. */
export interface PastPiece {
  readonly id: string;
  readonly name: string;
  readonly size?: OverallSize;
  /** Of whatever is counted: drawers, doors, chairs. */
  readonly count?: DecimalLike;
  /** Hours of work. */
  readonly hours: DecimalLike;
  /** Direct materials and consumables. */
  readonly materials: DecimalLike;
  /** Hardware, bought-in components and subcontract. */
  readonly boughtIn: DecimalLike;
  readonly labour: DecimalLike;
  readonly machines: DecimalLike;
  /** Workshop and administration overhead. */
  readonly overhead: DecimalLike;
  /** Freight and contingency. */
  readonly other: DecimalLike;
  /** All the owner's hours within it, quoting, buying and delivery included. */
  readonly ownerHours: DecimalLike;
  /** The owner's part of the labour. */
  readonly ownerLabour: DecimalLike;
  /** Where its numbers came from; entered by hand when absent. */
  readonly source?: Source;
}

export interface EarlyPriceInput {
  readonly currency: Currency;
  /** At least one. */
  readonly pieces: readonly PastPiece[];
  /** What is asked for. Hours take the place of hours scaled from the past pieces. */
  readonly asked: {
    readonly size?: OverallSize;
    readonly count?: DecimalLike;
    readonly hours?: DecimalLike;
  };
  /** Where a class is left out, `defaultScaling` decides. */
  readonly scaling?: Partial<Scaling>;
  /** Own judgement on all cost and hours (1.15 is 15 % more), with its reason. */
  readonly adjustment?: { readonly factor: DecimalLike; readonly reason: string };
  /** How far below and above the likely cost one past piece is taken to reach, as shares. */
  readonly band?: { readonly below: DecimalLike; readonly above: DecimalLike };
  readonly terms: PriceTerms;
}

/**
 * How cost grows with a piece, where the workshop says nothing else: boards keep their thickness, so materials go
 * with the area of the sides; hardware stays; machines and overhead follow the hours. That hours grow with the
 * square root of the area (as edges and joints do) is this program's rule of thumb, no source.
 */
export function defaultScaling(hasHours: boolean): Scaling {
  return {
    materials: { basis: 'area', exponent: 1 },
    boughtIn: { basis: 'none', exponent: 1 },
    labour: hasHours ? { basis: 'hours', exponent: 1 } : { basis: 'area', exponent: '0.5' },
    machines: { basis: 'hours', exponent: 1 },
    overhead: { basis: 'hours', exponent: 1 },
    other: { basis: 'hours', exponent: 1 },
  };
}

/** Taken where one past piece comes without a band of the workshop's own. Common practice, no source. */
export const DEFAULT_BAND = { below: '0.15', above: '0.25' } as const;
