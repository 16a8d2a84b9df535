export { COST_CAUSES, type CostCause } from './cause.ts';
export { combineDifferences } from './combine-differences.ts';
export type { ComparedColumn } from './compared-column.ts';
export {
  type CostAndPrice,
  type CostChange,
  type CostDifference,
  costDifference,
} from './cost-difference.ts';
