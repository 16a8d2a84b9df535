import type { ExactInstance } from '../instance/exact-instance.ts';
import type { LinearSolver } from '../linear-solver.ts';
import type { BestPlan } from '../patterns/best-plan.ts';
import type { PriceCut } from '../patterns/bound-of-prices.ts';
import { choosePatterns } from '../patterns/choose-patterns.ts';
import { dive } from '../patterns/dive.ts';
import { fewerKinds } from '../patterns/fewer-kinds.ts';
import { generateColumns } from '../patterns/generate-columns.ts';
import type { Pattern, PatternChoice } from '../patterns/pattern.ts';
import { type MasterSolution, PatternMaster } from '../patterns/pattern-master.ts';
import { tightenBound } from '../patterns/tighten-bound.ts';
import type { SearchWatch } from '../search-limits.ts';
import type { Generator } from '../seeded-generator.ts';
import { correctValues } from './correct-values.ts';
import { firstFit } from './first-fit.ts';
import { StickPricer, type WorthOfRest } from './stick-pricer.ts';
import { tidySticks } from './tidy-sticks.ts';

export interface StickSearch {
  readonly instance: ExactInstance;
  readonly solver: LinearSolver;
  readonly random: Generator;
  readonly watch: SearchWatch;
  readonly best: BestPlan<Pattern>;
  /** null where offcuts are worth nothing. */
  readonly worthOfRest: WorthOfRest | null;
}

const MOST_POOL = 1500;

/** The patterns that could stand in a cheaper plan, by what they lack at the last prices; cheapest first. */
function promising(
  patterns: readonly Pattern[],
  { prices, scarcity }: MasterSolution,
  mostLack: number,
): Pattern[] {
  return patterns
    .map((pattern) => {
      const worth = pattern.parts.reduce(
        (sum, part, at) => sum + (prices[part] ?? 0) * (pattern.counts[at] ?? 0),
        0,
      );
      return { pattern, lack: pattern.cost + (scarcity[pattern.stock] ?? 0) - worth };
    })
    .filter(({ lack }) => lack < mostLack)
    .sort((a, b) => a.lack - b.lack)
    .slice(0, MOST_POOL)
    .map(({ pattern }) => pattern);
}

function partsPerStick(choice: PatternChoice): number {
  const sticks = choice.reduce((sum, { count }) => sum + count, 0);
  const held = choice.map(
    ({ pattern, count }) => count * pattern.counts.reduce((sum, number) => sum + number, 0),
  );
  return held.reduce((sum, number) => sum + number, 0) / Math.max(1, sticks);
}

/**
 * Sticks at the least cost: first fit, the linear program over all patterns with its bound, dives, and an integer
 * program over the patterns found, until the best plan is proven or the work is done.
 * @returns whether the parts do not fit into the stock there is, even cut into pieces
 */
export function planSticks(search: StickSearch): { isImpossible: boolean } {
  const { instance, solver, watch, best, worthOfRest } = search;
  const { stocks } = instance;
  const quantities = instance.parts.map(({ quantity }) => quantity);
  const offer = (choice: PatternChoice | null) =>
    best.offer(choice === null ? null : tidySticks(instance, choice, quantities, worthOfRest));
  const first = firstFit(instance, quantities, worthOfRest);
  offer(first);
  const pricer = new StickPricer(instance, worthOfRest);
  const demand = { quantities, available: stocks.map(({ available }) => available) };
  const master = new PatternMaster<Pattern>(solver, demand, Math.max(...stocks.map(({ cost }) => cost)));
  try {
    for (const { pattern } of first ?? []) master.add(pattern);
    const cuts: PriceCut[] = [];
    const { solution, isComplete } = generateColumns({
      ...{ master, pricer, stocks, quantities, watch },
      mostRounds: 5000,
      timeShare: 0.5,
      onPrices: (cut, bound, { objective }) => {
        cuts.push(cut);
        best.raise(bound);
        // Rounded up, the bound and the linear program's cost are one: more patterns cannot raise it.
        const isEnough = best.terms.hasWholeCosts && best.bound >= Math.ceil(objective - 1e-6);
        return best.isProven() || (isEnough && stocks.length === 1);
      },
    });
    if (solution === null || best.isProven()) return { isImpossible: false };
    if (isComplete && solution.missing > 1e-6) return { isImpossible: true };
    if (worthOfRest === null && (stocks.length > 1 || best.terms.priceOfKind > 0))
      tightenBound({
        ...{ master, pricer, stocks, quantities, watch, solver, best, cuts },
        mostRounds: 200,
        timeShare: 0.6,
        mostTurns: Math.ceil(25 * watch.limits.effort),
      });
    correctValues({
      ...{ instance, quantities, available: demand.available, random: search.random, watch, worthOfRest },
      // Long sticks with many parts gain most by it.
      tries: Math.ceil((first !== null && partsPerStick(first) > 4.5 ? 30 : 6) * watch.limits.effort),
      timeShare: 0.55,
      offer: (choice) => {
        offer(choice);
        return best.isProven();
      },
    });
    for (const fewer of best.terms.priceOfKind > 0 ? fewerKinds(stocks) : []) {
      if (watch.isUp(0.7)) break;
      offer(
        dive({
          ...{ master, pricer, stocks: fewer, quantities, watch, isWhole: best.terms.hasWholeCosts },
          ...{ timeShare: 0.7, roundsEach: 20, mostFailures: 3 },
          cutoff: best.cost - best.terms.priceOfKind,
        }),
      );
    }
    const { effort } = watch.limits;
    const steps = Math.max(2, Math.ceil(6 * effort));
    for (let step = 0; step < steps && !best.isProven(); step += 1) {
      if (watch.isUp()) break;
      offer(
        dive({
          ...{ master, pricer, stocks, quantities, watch },
          timeShare: 1,
          roundsEach: step === 0 ? 20 : 8,
          cutoff: best.cost - best.terms.priceOfKind,
          mostFailures: 10 + 5 * step,
          isWhole: best.terms.hasWholeCosts,
          ...(step === 0 ? {} : { random: search.random }),
        }),
      );
      if (best.isProven() || watch.isUp()) break;
      if (step % 3 !== 0) continue;
      const pool = promising(master.patterns, solution, best.cost - best.bound + 1e-6);
      const isLast = step + 3 >= steps;
      const { choice, endedBy } = choosePatterns({
        ...{ solver, pool, stocks, quantities, start: null },
        nodes: Math.ceil(300 * (step + 1) * Math.min(4, effort)),
        seconds: watch.secondsLeft() * (isLast ? 1 : 0.4),
        gap: best.leastGap(),
        priceOfKind: best.terms.priceOfKind,
      });
      if (endedBy === 'clock') watch.isOutOfTime = true;
      offer(choice);
    }
    return { isImpossible: false };
  } finally {
    master.dispose();
  }
}
