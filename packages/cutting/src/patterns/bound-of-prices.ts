import type { ExactStock } from '../instance/exact-instance.ts';

/**
 * Prices of parts with the most that any pattern of each stock is worth at them. Each gives a bound: whatever is cut
 * costs at least (demand at these prices) + the sum over stock pieces used of (cost - most).
 */
export interface PriceCut {
  readonly worthOfDemand: number;
  readonly most: readonly number[];
}

/** Whether the prices were worked out exactly, so that they bound anything. */
export function isExact({ most }: PriceCut): boolean {
  return most.every(Number.isFinite);
}

const isLimited = ({ available }: ExactStock, total: number) => available < total;

/**
 * The bound that one set of prices gives (Lagrange; scaled down where stock without limit is underpriced, after
 * Farley 1990, Operations Research 38, from memory).
 */
export function boundOfPrices(
  { worthOfDemand, most }: PriceCut,
  stocks: readonly ExactStock[],
  total: number,
): number {
  let scale = 1;
  stocks.forEach((stock, index) => {
    const worth = most[index] ?? 0;
    if (!isLimited(stock, total) && worth > stock.cost) scale = Math.min(scale, stock.cost / worth);
  });
  return stocks.reduce((bound, stock, index) => {
    const short = stock.cost - scale * (most[index] ?? 0);
    return isLimited(stock, total) && short < 0 ? bound + stock.available * short : bound;
  }, scale * worthOfDemand);
}
