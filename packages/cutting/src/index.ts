export { checkPlan } from './checker/check-plan.ts';
export * from './cutting-errors.ts';
export * from './cutting-plan.ts';
export type { PlanningTools } from './find-layouts.ts';
export * from './instance/index.ts';
export * from './linear-solver.ts';
export { planCutting } from './plan-cutting.ts';
export type { SearchLimits, SearchProgress } from './search-limits.ts';
export * from './seeded-generator.ts';
