import type { ExactStock } from '../instance/exact-instance.ts';
import type { SearchWatch } from '../search-limits.ts';
import { boundOfPrices, isExact, type PriceCut } from './bound-of-prices.ts';
import type { Pattern, PatternPricer } from './pattern.ts';
import type { MasterSolution, PatternMaster } from './pattern-master.ts';

const ENOUGH = 1e-7;

export interface GenerateOptions<P extends Pattern> {
  readonly master: PatternMaster<P>;
  readonly pricer: PatternPricer<P>;
  readonly stocks: readonly ExactStock[];
  /** What is to be covered. */
  readonly quantities: readonly number[];
  readonly mostRounds: number;
  readonly watch: SearchWatch;
  /** Share of all time after which it ends. */
  readonly timeShare: number;
  /** Good patterns quickly are enough. */
  readonly isRough?: boolean;
  /** Called with every set of prices that is worked out to the end; true ends the rounds. */
  readonly onPrices?: (cut: PriceCut, bound: number, solution: MasterSolution) => boolean;
}

export interface Generated {
  /** null where the solver failed. */
  readonly solution: MasterSolution | null;
  /** No pattern is missing that could make the linear program cheaper. */
  readonly isComplete: boolean;
}

function worthOf({ parts, counts }: Pattern, prices: Float64Array): number {
  return parts.reduce((sum, part, at) => sum + (prices[part] ?? 0) * (counts[at] ?? 0), 0);
}

/** Column generation: prices the parts by the patterns known, finds better patterns at these prices, and again. */
export function generateColumns<P extends Pattern>(options: GenerateOptions<P>): Generated {
  const { master, pricer, stocks, quantities, watch } = options;
  const total = quantities.reduce((sum, quantity) => sum + quantity, 0);
  let solution = master.solve();
  for (let round = 0; round < options.mostRounds; round += 1) {
    if (solution === null || watch.isUp(options.timeShare)) return { solution, isComplete: false };
    const { prices, scarcity } = solution;
    const least = stocks.map(({ cost }, index) => cost + (scarcity[index] ?? 0));
    const priced = pricer.price(prices, quantities, least, options.isRough === true);
    const cut: PriceCut = {
      worthOfDemand: quantities.reduce((sum, quantity, part) => sum + quantity * (prices[part] ?? 0), 0),
      most: priced.map(({ most }) => most),
    };
    const isEnough =
      (isExact(cut) && options.onPrices?.(cut, boundOfPrices(cut, stocks, total), solution)) === true;
    let added = 0;
    priced.forEach(({ patterns }, index) => {
      const enough = (least[index] ?? 0) + ENOUGH * Math.max(1, stocks[index]?.cost ?? 0);
      for (const pattern of patterns)
        if (
          worthOf(pattern, prices) + (stocks[index]?.cost ?? 0) - pattern.cost > enough &&
          master.add(pattern)
        )
          added += 1;
    });
    if (isEnough) return { solution: master.solve(), isComplete: false };
    if (added === 0) return { solution, isComplete: true };
    solution = master.solve();
  }
  return { solution, isComplete: false };
}
