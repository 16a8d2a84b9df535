import type { DecimalLike } from '@scantling/decimals';
import type { Figure } from '@scantling/figures';

export const HOMES = ['machine-rate', 'labour-rate', 'workshop-pool', 'administration-pool'] as const;
/** Where a yearly amount is recovered. */
export type Home = (typeof HOMES)[number];
export type RateHome = 'machine-rate' | 'labour-rate';

/** A yearly cost of the shop with its one home. */
export interface HomedAmount {
  readonly id: string;
  readonly name: string;
  readonly yearlyAmount: DecimalLike;
  readonly home: Home;
  /**
   * The part of rates that recovers it, or a part of it ("floor", "power"). Must be given where the home is
   * a rate; where the home is a pool, that part is taken off the pool.
   */
  readonly recoveredAs?: string;
  /** Worked out elsewhere, with its working: stands in place of a leaf made from `yearlyAmount`. */
  readonly worked?: Figure<'money/year'>;
  /** A part of this amount that stands in the list as an amount of its own, and is taken off here. */
  readonly less?: Figure<'money/year'>;
}

/** What rates recover in a year under one name. */
export interface RecoveredByRates {
  /** As amounts name it: the kind of a machine-hour rate's line, or a name for labour's. */
  readonly recoveredAs: string;
  readonly by: RateHome;
  readonly perYear: Figure<'money/year'>;
}

/** One yearly amount, and where it comes back: amount = by machine rates + by labour rates + in pool + nowhere. */
export interface HomeLine {
  readonly id: string;
  readonly name: string;
  readonly home: Home;
  readonly amount: Figure<'money/year'>;
  readonly byMachineRates: Figure<'money/year'>;
  readonly byLabourRates: Figure<'money/year'>;
  readonly inPool: Figure<'money/year'>;
  /** What no home recovers; below 0 where rates recover more than the amount. */
  readonly nowhere: Figure<'money/year'>;
}

export interface OneHome {
  readonly total: Figure<'money/year'>;
  readonly lines: readonly HomeLine[];
  /** What each home recovers; pools are net of what rates recover. */
  readonly homes: Readonly<Record<Home, Figure<'money/year'>>>;
  /** Total less all homes; 0 where the proof holds. */
  readonly rest: Figure<'money/year'>;
  /** Every amount comes back once, and rates recover nothing that is no amount. */
  readonly holds: boolean;
  readonly findings: readonly HomeFinding[];
}

/** What keeps the one-home proof from holding. */
export interface HomeFinding {
  /**
   * twice: one amount or one recovery stands for two. unrecovered: no home brings it back. over-recovered:
   * rates bring back more than is paid. unpaid: rates recover what is no amount of the shop.
   */
  readonly kind: 'twice' | 'unrecovered' | 'over-recovered' | 'unpaid';
  /** The amount's or the recovery's name. */
  readonly about: string;
  /** What is wrong and how to mend it. */
  readonly message: string;
}
