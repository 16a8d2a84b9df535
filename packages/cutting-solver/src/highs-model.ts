import type { LinearModel, LinearSolution } from '@scantling/cutting';
import type { Highs } from 'highs';

type Row = { lower: number; upper: number };
type Column = { cost: number; upper: number; rows: readonly number[]; values: readonly number[] };

/**
 * A linear program held by HiGHS and by us: where HiGHS fails, which it may after very many runs, the program is
 * handed over anew and solved once more.
 */
export class HighsModel implements LinearModel {
  private readonly rows: Row[] = [];
  private readonly columns: Column[] = [];
  private model;

  constructor(private readonly highs: Highs) {
    this.model = this.begin();
  }

  private begin() {
    const model = this.highs.createModel();
    model.options.set({ output_flag: false, random_seed: 1 });
    return model;
  }

  addRow(lower: number, upper: number): number {
    this.rows.push({ lower, upper });
    this.model.addRow(lower, upper, { indices: [], values: [] });
    return this.rows.length - 1;
  }

  addColumn(cost: number, upper: number, rows: readonly number[], values: readonly number[]): number {
    const column = { cost, upper, rows: [...rows], values: [...values] };
    this.columns.push(column);
    this.model.addCol(cost, 0, upper, { indices: column.rows, values: column.values });
    return this.columns.length - 1;
  }

  setColumnUpper(index: number, upper: number): void {
    const column = this.columns[index];
    if (column === undefined || column.upper === upper) return;
    column.upper = upper;
    this.model.changeColBounds(index, 0, upper);
  }

  setRowLower(index: number, lower: number): void {
    this.setRow(index, lower, this.rows[index]?.upper ?? Number.POSITIVE_INFINITY);
  }

  setRowUpper(index: number, upper: number): void {
    this.setRow(index, this.rows[index]?.lower ?? Number.NEGATIVE_INFINITY, upper);
  }

  private setRow(index: number, lower: number, upper: number): void {
    const row = this.rows[index];
    if (row === undefined || (row.lower === lower && row.upper === upper)) return;
    row.lower = lower;
    row.upper = upper;
    this.model.changeRowBounds(index, lower, upper);
  }

  solve(): LinearSolution | null {
    return this.run() ?? this.rebuiltAndRun();
  }

  private run(): LinearSolution | null {
    try {
      this.model.run();
      if (this.model.getModelStatus() !== this.highs.constants.modelStatus.optimal) return null;
      const { colValue, rowDual } = this.model.getSolution();
      return { objective: this.model.getObjectiveValue(), values: colValue, duals: rowDual };
    } catch {
      return null;
    }
  }

  private rebuiltAndRun(): LinearSolution | null {
    this.model.dispose();
    this.model = this.begin();
    for (const { lower, upper } of this.rows) this.model.addRow(lower, upper, { indices: [], values: [] });
    for (const { cost, upper, rows, values } of this.columns)
      this.model.addCol(cost, 0, upper, { indices: rows, values });
    return this.run();
  }

  dispose(): void {
    this.model.dispose();
  }
}
