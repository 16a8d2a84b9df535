import type { ExactInstance } from '../instance/exact-instance.ts';
import { boundOfPrices, isExact, type PriceCut } from '../patterns/bound-of-prices.ts';
import { generateColumns } from '../patterns/generate-columns.ts';
import type { Pattern, PatternPricer, Priced } from '../patterns/pattern.ts';
import { PatternMaster } from '../patterns/pattern-master.ts';
import { boundByWholeStock } from '../patterns/stock-bound.ts';
import { tightenBound } from '../patterns/tighten-bound.ts';
import { GuillotineValues } from './guillotine-values.ts';
import type { SheetPlanning } from './sheet-planning.ts';

/** Grid work of one pricing, and rounds, per unit of effort. */
const GRID_WORK = 2_500_000;
const ROUNDS = 120;
const TIME_SHARE = 0.35;

/** Prices sheets with parts as often as wanted: more than layouts can hold, so that bounds from it hold. */
class RelaxedPricer implements PatternPricer {
  private readonly values: GuillotineValues;

  constructor(private readonly instance: ExactInstance) {
    this.values = new GuillotineValues(instance, GRID_WORK);
  }

  price(prices: Float64Array, most: readonly number[]): Priced<Pattern>[] {
    this.values.setValues(prices);
    const all = most.reduce((sum, quantity, part) => sum + quantity * (prices[part] ?? 0), 0);
    return this.instance.stocks.map(({ cost }, stock) => {
      const counts = this.values.counts(stock);
      const parts = [...counts.keys()].sort((a, b) => a - b);
      const pattern = { stock, cost, parts, counts: parts.map((part) => counts.get(part) ?? 0) };
      return { most: Math.min(all, this.values.most(stock)), patterns: parts.length > 0 ? [pattern] : [] };
    });
  }
}

/** At prices by area a sheet holds its own area at most. */
function areaCut({ stocks, parts }: ExactInstance): PriceCut {
  const largest = Math.max(...stocks.map(({ length, width }) => length * width));
  return {
    worthOfDemand: parts.reduce(
      (sum, { length, width, quantity }) => sum + (quantity * length * width) / largest,
      0,
    ),
    most: stocks.map(({ length, width }) => (length * width) / largest),
  };
}

/**
 * Bounds of sheets: by area, by the linear program over guillotine layouts without limits of quantity, and by whole
 * sheets at the prices of both.
 */
export function boundSheets({ instance, solver, watch, best, worth }: SheetPlanning): void {
  if (worth !== null) return;
  const { stocks, parts } = instance;
  const quantities = parts.map(({ quantity }) => quantity);
  const total = quantities.reduce((sum, quantity) => sum + quantity, 0);
  const area = areaCut(instance);
  best.raise(boundOfPrices(area, stocks, total));
  const cuts = [area];
  const seconds = watch.secondsLeft() * 0.05;
  best.raise(boundByWholeStock(solver, stocks, cuts, seconds, best.terms.priceOfKind).bound);
  if (best.isProven()) return;
  const largest = Math.max(...stocks.map(({ cost }) => cost));
  const master = new PatternMaster<Pattern>(
    solver,
    { quantities, available: stocks.map(({ available }) => available) },
    largest,
  );
  try {
    const pricer = new RelaxedPricer(instance);
    const shared = { master, pricer, stocks, quantities, watch };
    generateColumns({
      ...shared,
      mostRounds: Math.ceil(ROUNDS * Math.max(0.25, watch.limits.effort)),
      timeShare: TIME_SHARE * 0.7,
      onPrices: (cut, bound) => {
        if (isExact(cut)) cuts.push(cut);
        best.raise(bound);
        return best.isProven();
      },
    });
    if (best.isProven()) return;
    // The area's cut stands last, where the newest are kept.
    cuts.push(area);
    tightenBound({
      ...{ ...shared, solver, best, cuts },
      mostRounds: 20,
      timeShare: TIME_SHARE,
      mostTurns: Math.ceil(8 * watch.limits.effort),
    });
  } finally {
    master.dispose();
  }
}
