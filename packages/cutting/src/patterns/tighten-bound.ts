import type { LinearSolver } from '../linear-solver.ts';
import type { BestPlan } from './best-plan.ts';
import { isExact, type PriceCut } from './bound-of-prices.ts';
import { type GenerateOptions, generateColumns } from './generate-columns.ts';
import type { Pattern } from './pattern.ts';
import { boundByWholeStock } from './stock-bound.ts';

export interface TightenOptions<P extends Pattern> extends GenerateOptions<P> {
  readonly solver: LinearSolver;
  readonly best: BestPlan<P>;
  /** Prices worked out so far. */
  readonly cuts: PriceCut[];
  readonly mostTurns: number;
}

/**
 * Raises the bound by whole stock pieces in turns: the cheapest stock that all prices so far allow, then prices at
 * which just that stock does not go round, until it does (a decomposition after Benders).
 * @returns the cheapest stock that the linear program fits into, null where the turns ended before
 */
export function tightenBound<P extends Pattern>(options: TightenOptions<P>): readonly number[] | null {
  const { solver, stocks, best, master, watch, cuts } = options;
  try {
    for (let turn = 0; turn < options.mostTurns && !watch.isUp(options.timeShare); turn += 1) {
      const seconds = watch.secondsLeft() * 0.25;
      const { bound, used } = boundByWholeStock(solver, stocks, cuts, seconds, best.terms.priceOfKind);
      best.raise(bound);
      if (used === null || best.isProven()) return null;
      master.limitStock(used);
      const before = cuts.length;
      const { solution, isComplete } = generateColumns({
        ...options,
        onPrices: (cut) => {
          // Prices at which this stock cannot hold the demand's worth rule it out.
          const held = cut.most.reduce((sum, most, stock) => sum + most * (used[stock] ?? 0), 0);
          const isViolated = isExact(cut) && held < cut.worthOfDemand * (1 - 1e-7) - 1e-6;
          if (isViolated) cuts.push(cut);
          return isViolated;
        },
      });
      if (solution !== null && solution.missing < 1e-6) return used;
      if (solution === null || (cuts.length === before && isComplete)) return null;
    }
    return null;
  } finally {
    master.widen();
  }
}
