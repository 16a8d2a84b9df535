import type { Decimal, DecimalLike } from '@scantling/decimals';
import type { Worked } from '../recalculation/index.ts';

export interface SolveQuestion {
  /** Id of the leaf looked for. */
  readonly leaf: string;
  /** Id of the figure that is to come out at the target. */
  readonly result: string;
  /** A value, or the id of another figure of the table that it is to equal: where two ways cost the same. */
  readonly target: { readonly value: DecimalLike } | { readonly figure: string };
  /** Where to look; what the leaf can be at all, and outward from its value, where left out. */
  readonly low?: DecimalLike;
  readonly high?: DecimalLike;
}

/** The result, and what it is to equal, with the leaf at one value. */
export interface Probe {
  readonly value: Decimal;
  readonly result: Worked;
  readonly target: Worked;
  /** Result less target; null where one of them has no answer. */
  readonly gap: Worked;
}

/** A value of the leaf at which the result comes out as wanted. */
export interface Crossing {
  readonly at: Probe;
  /** Every value from here to there does as well, because the result is rounded or counted in whole packs. */
  readonly from: Decimal;
  readonly to: Decimal;
}

/** Where the result jumps over the target: the values on either side, as near as they can be told apart. */
export interface Step {
  readonly below: Probe;
  readonly above: Probe;
}

/**
 * never-reaches: too low or too high all along. steps-over: it jumps from one side to the other. does-not-move: the
 * result does not follow the leaf. no-answer: it cannot be worked out anywhere in the range.
 */
export type NoSolution = 'never-reaches' | 'steps-over' | 'does-not-move' | 'no-answer';

export interface Solution {
  readonly crossings: readonly Crossing[];
  readonly steps: readonly Step[];
  /** Why there is no crossing; null where there is one. */
  readonly why: NoSolution | null;
  /** How result less target goes as the leaf grows, at the values tried. */
  readonly course: 'rises' | 'falls' | 'flat' | 'both-ways';
  readonly searched: { readonly low: Decimal; readonly high: Decimal };
  /** The values tried at which result less target was least and greatest; null where there was no answer. */
  readonly least: Probe | null;
  readonly greatest: Probe | null;
  /** As it stands. */
  readonly now: Probe;
}
