import type { ExactStock } from '../instance/exact-instance.ts';
import type { IntegerColumn, LinearSolver } from '../linear-solver.ts';
import { nameOf, type Pattern, type PatternChoice } from './pattern.ts';

export interface ChooseOptions<P extends Pattern> {
  readonly solver: LinearSolver;
  readonly pool: readonly P[];
  readonly stocks: readonly ExactStock[];
  readonly quantities: readonly number[];
  /** The best plan known, to begin with. */
  readonly start: PatternChoice<P> | null;
  readonly nodes: number;
  readonly seconds: number;
  /** A plan so little above the bound counts as the best. */
  readonly gap: number;
  /** What one more kind of stock costs; 0 where it does not matter. */
  readonly priceOfKind: number;
}

export interface Chosen<P extends Pattern> {
  readonly choice: PatternChoice<P> | null;
  readonly endedBy: 'proof' | 'work' | 'clock';
}

/** The cheapest choice of whole patterns out of a pool, by integer programming. */
export function choosePatterns<P extends Pattern>(options: ChooseOptions<P>): Chosen<P> {
  const { solver, pool, stocks, quantities, start } = options;
  const hasKinds = options.priceOfKind > 0;
  const total = quantities.reduce((sum, quantity) => sum + quantity, 0);
  const rows = [
    ...quantities.map((lower) => ({ lower, upper: Number.POSITIVE_INFINITY })),
    // With kinds, a stock's row reads: used - available x chosen <= 0.
    ...stocks.map(({ available }) => ({ lower: Number.NEGATIVE_INFINITY, upper: hasKinds ? 0 : available })),
  ];
  const started = new Map(start?.map(({ pattern, count }) => [nameOf(pattern), count] as const));
  const columns: IntegerColumn[] = pool.map((pattern) => {
    const uses = pattern.parts.map((part, at) =>
      Math.ceil((quantities[part] ?? 0) / (pattern.counts[at] ?? 1)),
    );
    return {
      cost: pattern.cost,
      upper: Math.min(stocks[pattern.stock]?.available ?? 0, Math.max(0, ...uses)),
      rows: [...pattern.parts, quantities.length + pattern.stock],
      values: [...pattern.counts, 1],
      ...(start === null ? {} : { start: started.get(nameOf(pattern)) ?? 0 }),
    };
  });
  const usedStocks = new Set(start?.map(({ pattern }) => pattern.stock));
  if (hasKinds)
    stocks.forEach(({ available }, stock) => {
      columns.push({
        cost: options.priceOfKind,
        upper: 1,
        rows: [quantities.length + stock],
        values: [-Math.min(available, total)],
        ...(start === null ? {} : { start: usedStocks.has(stock) ? 1 : 0 }),
      });
    });
  const { values, endedBy } = solver.solveInteger(
    { rows, columns },
    { nodes: options.nodes, seconds: options.seconds, gap: options.gap },
  );
  if (values === null) return { choice: null, endedBy };
  const choice = pool.flatMap((pattern, index) => {
    const count = values[index] ?? 0;
    return count > 0 ? [{ pattern, count }] : [];
  });
  return { choice, endedBy };
}
