import type { DecimalLike } from '@scantling/decimals';
import type { Figure } from '@scantling/figures';

export const OVERHEAD_POOLS = ['workshop', 'administration'] as const;
export type OverheadPoolKind = (typeof OVERHEAD_POOLS)[number];

export const HOURLY_BASES = ['productive-hours', 'machine-hours'] as const;
export const COST_BASES = ['labour-cost', 'prime-cost'] as const;
/** Hours of a year, or yearly cost of which overhead is a share. */
export type HourlyBase = (typeof HOURLY_BASES)[number];
export type CostBase = (typeof COST_BASES)[number];
export type OverheadBase = HourlyBase | CostBase;

/** The bases as people say them. */
export const OVERHEAD_BASE_WORDS: Readonly<Record<OverheadBase, string>> = {
  'productive-hours': 'productive hours',
  'machine-hours': 'machine hours',
  'labour-cost': 'labour cost',
  'prime-cost': 'prime cost',
};

/** One yearly cost of being open. */
export interface YearlyAmount {
  readonly id: string;
  readonly name: string;
  readonly yearlyAmount: DecimalLike;
}

/** Yearly costs recovered together over one base. */
export interface OverheadPool<Base extends OverheadBase = OverheadBase> {
  readonly id: string;
  readonly name: string;
  readonly kind: OverheadPoolKind;
  /** Planned for the year. */
  readonly amounts: readonly YearlyAmount[];
  /** What machine-hour and labour rates recover of these amounts; nothing when absent. */
  readonly recoveredByRates?: DecimalLike;
  readonly base: Base;
  /** Hours, or cost, planned for the year. */
  readonly plannedBase: DecimalLike;
  /** The year as it went: what was spent (net of rates likewise) and the base there was. */
  readonly actual?: { readonly amount: DecimalLike; readonly base: DecimalLike };
}

/** `money/h` over hours, a share of cost otherwise. */
export type OverheadRateUnit<Base extends OverheadBase> = Base extends HourlyBase ? 'money/h' : 'ratio';

export interface OverheadRate<Base extends OverheadBase = OverheadBase> {
  readonly poolId: string;
  readonly name: string;
  readonly kind: OverheadPoolKind;
  readonly base: Base;
  /** Planned amounts less what rates recover. */
  readonly net: Figure<'money'>;
  /** Net planned amount over the planned base: what jobs are charged. */
  readonly rate: Figure<OverheadRateUnit<Base>>;
  readonly actual: OverheadActual<Base> | null;
}

/** The year as it went. Above 0 is under-recovered. */
export interface OverheadActual<Base extends OverheadBase> {
  /** Actual amount over actual base. */
  readonly rate: Figure<OverheadRateUnit<Base>>;
  /** Planned rate times actual base: what the jobs were charged. */
  readonly recovered: Figure<'money'>;
  /** Actual amount less recovered; spending + volume. */
  readonly underRecovered: Figure<'money'>;
  /** Actual less planned amount. */
  readonly spending: Figure<'money'>;
  /** Planned amount less recovered: the base that was missing, at the planned rate. */
  readonly volume: Figure<'money'>;
}
