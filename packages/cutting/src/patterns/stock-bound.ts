import type { ExactStock } from '../instance/exact-instance.ts';
import type { LinearSolver } from '../linear-solver.ts';
import type { PriceCut } from './bound-of-prices.ts';

const MOST_CUTS = 120;
const NODES = 4000;

/**
 * A bound by whole stock pieces: how many of each must be bought at least, given that at every set of prices the
 * stock bought must be able to hold what the demand is worth. Never more than any plan costs, often more than the
 * linear program's bound: half a sheet cannot be bought. Holds where offcuts are worth nothing.
 * @param priceOfKind what one more kind of stock costs
 * @returns with the bound the stock pieces that cost so much, null where they are not known
 */
export function boundByWholeStock(
  solver: LinearSolver,
  stocks: readonly ExactStock[],
  cuts: readonly PriceCut[],
  seconds: number,
  priceOfKind: number,
): { bound: number; used: readonly number[] | null } {
  const kept = cuts.slice(-MOST_CUTS);
  if (kept.length === 0) return { bound: Number.NEGATIVE_INFINITY, used: null };
  const rows = [
    // A little less than the demand's worth, for the solver's tolerances.
    ...kept.map(({ worthOfDemand }) => ({
      lower: worthOfDemand - 1e-6 * Math.max(1, worthOfDemand),
      upper: Number.POSITIVE_INFINITY,
    })),
    // Used - available x kind chosen <= 0.
    ...stocks.map(() => ({ lower: Number.NEGATIVE_INFINITY, upper: 0 })),
  ];
  const columns = [
    ...stocks.map(({ cost, available }, stock) => ({
      cost,
      upper: available,
      rows: [...kept.map((_, row) => row), kept.length + stock],
      values: [...kept.map(({ most }) => most[stock] ?? 0), 1],
    })),
    ...stocks.map(({ available }, stock) => ({
      cost: priceOfKind,
      upper: 1,
      rows: [kept.length + stock],
      values: [-Math.max(1, available)],
    })),
  ];
  const { bound, values, endedBy } = solver.solveInteger(
    { rows, columns },
    { nodes: NODES, seconds, gap: WHOLE_GAP },
  );
  return { bound, used: endedBy === 'proof' && values !== null ? values.slice(0, stocks.length) : null };
}

/** Where all costs are whole numbers, a plan less than one step above the bound is the best. */
export const WHOLE_GAP = 0.999_999;
