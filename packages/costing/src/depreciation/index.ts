export { type AcquisitionPart, acquisitionCost } from './acquisition-cost.ts';
export { type AssetDisposal, type AssetFigures, type DepreciableAsset, firstYearShare } from './asset.ts';
export type { MethodDefinition } from './method.ts';
export type { DecliningBalance } from './methods/declining-balance.ts';
export {
  DEPRECIATION_METHODS,
  type DepreciationMethod,
  type DepreciationMethodName,
  type DepreciationSettings,
} from './methods/index.ts';
export type { StraightLine } from './methods/straight-line.ts';
export type { SumOfYearsDigits } from './methods/sum-of-years-digits.ts';
export { halfYearPercents, RECOVERY_YEARS, type RecoveryYears, type TaxTable } from './methods/tax-table.ts';
export type { UnitsOfProduction } from './methods/units-of-production.ts';
export {
  type DepreciationSchedule,
  type DepreciationYear,
  type DisposalResult,
  depreciationSchedule,
  scheduleOf,
} from './schedule.ts';
