export * from './cutting-planner.ts';
export { loadSolver } from './highs-solver.ts';
export * from './planner-errors.ts';
