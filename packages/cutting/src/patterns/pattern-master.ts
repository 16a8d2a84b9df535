import type { LinearModel, LinearSolution, LinearSolver } from '../linear-solver.ts';
import { nameOf, type Pattern } from './pattern.ts';

/** What cutting asks of the choice of patterns. */
export interface Demand {
  /** Of each part. */
  readonly quantities: readonly number[];
  /** Of each stock piece; as many as there are parts counts as any number. */
  readonly available: readonly number[];
}

export interface MasterSolution {
  readonly objective: number;
  /** Of each pattern, in the order they were added. */
  readonly values: Float64Array;
  /** What one more of each part costs. */
  readonly prices: Float64Array;
  /** What one more of each stock piece would save; 0 where there are enough. */
  readonly scarcity: Float64Array;
  /** How much of the demand no pattern covers. */
  readonly missing: number;
}

const MISSING_COST = 1000;

/**
 * The linear program that chooses patterns: every part as often as wanted, no stock beyond what there is, at the least
 * cost. A costly stand-in for each part keeps it solvable from the first pattern on.
 */
export class PatternMaster<P extends Pattern> {
  readonly patterns: P[] = [];
  private readonly names = new Set<string>();
  private readonly model: LinearModel;
  private readonly partCount: number;

  constructor(
    solver: LinearSolver,
    private readonly demand: Demand,
    /** What the stand-ins cost is a multiple of this. */
    largestCost: number,
  ) {
    this.model = solver.createModel();
    this.partCount = demand.quantities.length;
    for (const quantity of demand.quantities) this.model.addRow(quantity, Number.POSITIVE_INFINITY);
    for (const available of demand.available) this.model.addRow(Number.NEGATIVE_INFINITY, available);
    for (let part = 0; part < this.partCount; part += 1)
      this.model.addColumn(MISSING_COST * Math.max(1, largestCost), Number.POSITIVE_INFINITY, [part], [1]);
  }

  /** @returns whether it is a new one */
  add(pattern: P): boolean {
    const name = nameOf(pattern);
    if (this.names.has(name)) return false;
    this.names.add(name);
    this.patterns.push(pattern);
    const rows = [...pattern.parts, this.partCount + pattern.stock];
    this.model.addColumn(pattern.cost, Number.POSITIVE_INFINITY, rows, [...pattern.counts, 1]);
    return true;
  }

  /** Sets how much of each stock there is. */
  limitStock(available: readonly number[]): void {
    available.forEach((most, stock) => {
      this.model.setRowUpper(this.partCount + stock, most);
    });
  }

  /** Turns to what is left: parts still to cut, and patterns that would cut too many of one, or are banned, are out. */
  narrow(remaining: readonly number[], available: readonly number[], banned: ReadonlySet<P>): void {
    this.limitStock(available);
    remaining.forEach((quantity, part) => {
      this.model.setRowLower(part, quantity);
    });
    this.patterns.forEach((pattern, index) => {
      const { parts, counts } = pattern;
      const most = parts.reduce(
        (least, part, at) => Math.min(least, Math.floor((remaining[part] ?? 0) / (counts[at] ?? 1))),
        Number.POSITIVE_INFINITY,
      );
      this.model.setColumnUpper(this.partCount + index, banned.has(pattern) ? 0 : most);
    });
  }

  /** Back to the whole demand. */
  widen(): void {
    this.limitStock(this.demand.available);
    this.demand.quantities.forEach((quantity, part) => {
      this.model.setRowLower(part, quantity);
    });
    this.patterns.forEach((_, index) => {
      this.model.setColumnUpper(this.partCount + index, Number.POSITIVE_INFINITY);
    });
  }

  /** null where the solver fails, which ends what rests on it, not the search. */
  solve(): MasterSolution | null {
    const solved = this.model.solve();
    return solved === null ? null : this.read(solved);
  }

  private read({ objective, values, duals }: LinearSolution): MasterSolution {
    const { partCount } = this;
    let missing = 0;
    for (let part = 0; part < partCount; part += 1) missing += values[part] ?? 0;
    return {
      objective,
      missing,
      values: values.slice(partCount),
      prices: duals.slice(0, partCount).map((price) => Math.max(0, price)),
      scarcity: duals.slice(partCount).map((price) => Math.max(0, -price)),
    };
  }

  dispose(): void {
    this.model.dispose();
  }
}
