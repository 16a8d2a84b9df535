/** What a solved linear program gives. */
export interface LinearSolution {
  readonly objective: number;
  readonly values: Float64Array;
  /** One a row: what a unit more on its right side costs. */
  readonly duals: Float64Array;
}

/** A linear program that grows by columns: least cost, columns of 0 or more. */
export interface LinearModel {
  /** @returns the row's index */
  addRow(lower: number, upper: number): number;
  /** @returns the column's index */
  addColumn(cost: number, upper: number, rows: readonly number[], values: readonly number[]): number;
  setColumnUpper(column: number, upper: number): void;
  setRowLower(row: number, lower: number): void;
  setRowUpper(row: number, upper: number): void;
  /** null where the solver gives no optimum. */
  solve(): LinearSolution | null;
  dispose(): void;
}

/** One column of an integer program, from 0 to `upper` in whole numbers. */
export interface IntegerColumn {
  readonly cost: number;
  readonly upper: number;
  readonly rows: readonly number[];
  readonly values: readonly number[];
  /** A plan to begin with. */
  readonly start?: number;
}

export interface IntegerProgram {
  readonly rows: readonly { readonly lower: number; readonly upper: number }[];
  readonly columns: readonly IntegerColumn[];
}

export interface IntegerLimits {
  /** Branches looked at; the same limit gives the same answer unless the seconds end first. */
  readonly nodes: number;
  readonly seconds: number;
  /** A solution so little above the bound counts as the best. */
  readonly gap: number;
}

export interface IntegerSolution {
  /** null where none was found. */
  readonly values: readonly number[] | null;
  /** No whole-number solution costs less. */
  readonly bound: number;
  readonly endedBy: 'proof' | 'work' | 'clock';
}

/** What the planner needs of a solver of linear and integer programs; it brings none of its own. */
export interface LinearSolver {
  createModel(): LinearModel;
  solveInteger(program: IntegerProgram, limits: IntegerLimits): IntegerSolution;
}
