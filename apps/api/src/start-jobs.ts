import { costDemoCommission } from './features/cost-sheets/cost-demo-commission.ts';
import { loadDemoAtFirstStart } from './features/demo/load-demo-at-first-start.ts';
import type { StartJob } from './start-job.ts';

/** In the order in which they run. */
export const startJobs: readonly StartJob[] = [loadDemoAtFirstStart, costDemoCommission];
