import type { ExactInstance } from '../instance/exact-instance.ts';
import type { LinearSolver } from '../linear-solver.ts';
import type { BestPlan } from '../patterns/best-plan.ts';
import type { SearchWatch } from '../search-limits.ts';
import type { Generator } from '../seeded-generator.ts';
import type { SheetPattern, WorthOfRectangle } from './sheet.ts';

/** What the planning of sheets works with. */
export interface SheetPlanning {
  readonly instance: ExactInstance;
  readonly solver: LinearSolver;
  readonly random: Generator;
  readonly watch: SearchWatch;
  readonly best: BestPlan<SheetPattern>;
  /** null where offcuts are worth nothing. */
  readonly worth: WorthOfRectangle | null;
}
