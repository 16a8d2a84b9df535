export {
  HOMES,
  type Home,
  type HomedAmount,
  type HomeFinding,
  type HomeLine,
  type OneHome,
  type RateHome,
  type RecoveredByRates,
} from './homes.ts';
export { oneHome } from './one-home.ts';
export {
  COST_BASES,
  type CostBase,
  HOURLY_BASES,
  type HourlyBase,
  OVERHEAD_BASE_WORDS,
  OVERHEAD_POOLS,
  type OverheadActual,
  type OverheadBase,
  type OverheadPool,
  type OverheadPoolKind,
  type OverheadRate,
  type OverheadRateUnit,
  type YearlyAmount,
} from './overhead-pool.ts';
export { overheadCharge, overheadRate } from './overhead-rate.ts';
