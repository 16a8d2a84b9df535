import type { Decimal, DecimalLike } from '@scantling/decimals';
import type { Shape, Spread } from './spread.ts';
import type { Statistics } from './statistics.ts';

export interface Estimate {
  readonly low: DecimalLike;
  readonly likely: DecimalLike;
  readonly high: DecimalLike;
  readonly shape?: Shape;
  /** Values of one group move together, by one uniform number a sample; null stands alone. */
  readonly group?: string | null;
}

export interface RiskQuestion {
  /** Ids of the figures looked at. */
  readonly results: readonly string[];
  /** Leaves that are not known for certain, by id. */
  readonly uncertain: Readonly<Record<string, Estimate>>;
  /** The three-point estimates that stand in the table are uncertain as well, each as its mean, once. */
  readonly usesThreePoints: boolean;
  /** How those are spread, and estimates that do not say. */
  readonly shape: Shape;
  /** Hours without a group of their own move together. */
  readonly doHoursMoveTogether: boolean;
  readonly samples: number;
  readonly seed: number;
  /** Leaves held at another value than they have. */
  readonly changes?: Readonly<Record<string, DecimalLike>>;
}

/** A figure that was sampled. */
export interface Uncertain extends Spread {
  readonly id: string;
  readonly place: number;
  readonly group: string | null;
  readonly mean: Decimal;
}

export interface RiskResult {
  readonly id: string;
  /** With every uncertain value at its mean; null where it has no answer. */
  readonly atMeans: Decimal | null;
  /** Null where no sample had an answer. */
  readonly statistics: Statistics | null;
  /** Samples in which it had no answer. */
  readonly withoutAnswer: number;
  /** The part of its variance that one value, or group of values, explains by itself; the greatest first. */
  readonly shares: readonly { readonly name: string; readonly isGroup: boolean; readonly share: number }[];
}

export interface Risk {
  readonly samples: number;
  readonly seed: number;
  readonly uncertain: readonly Uncertain[];
  readonly results: readonly RiskResult[];
}

/** Thrown when an estimate cannot be used: names the value and the mend. */
export class RiskInputError extends Error {
  readonly code = 'risk-input';
  constructor(
    readonly field: string,
    readonly reason: string,
    readonly mend: string,
  ) {
    super(`${field} ${reason}: ${mend}`);
    this.name = 'RiskInputError';
  }
}
