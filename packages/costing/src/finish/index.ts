export {
  coverageByFilm,
  coverageInUse,
  type FinishSystem,
  finishApplied,
  type SpreadingUnit,
} from './coverage.ts';
export { type Caution, OIL_SOAKED_RAGS } from './finish-caution.ts';
export {
  type Coverage,
  type FinishApplication,
  type FinishQuantity,
  finishQuantity,
} from './finish-quantity.ts';
export { type GlueQuantity, type GlueSpread, glueQuantity } from './glue-quantity.ts';
export { type Film, METRIC_SOLIDS } from './spreading-rate.ts';
