/**
 * What a cell is there for; whoever writes the file gives each role its letters, grounds and lines. `input` is the
 * one role whose cells may be changed.
 */
export type CellRole =
  | 'title'
  | 'fact'
  | 'warning'
  | 'heading'
  | 'column-head'
  | 'number-head'
  | 'label'
  | 'line'
  | 'total-label'
  | 'remark'
  | 'unit'
  | 'value'
  | 'line-value'
  | 'total'
  | 'input';

/** Text as it is: never a formula, whatever it begins with. */
export interface TextCell {
  readonly kind: 'text';
  readonly text: string;
  readonly role: CellRole;
}

/** A value to change, or one that holds by definition. */
export interface NumberCell {
  readonly kind: 'number';
  /** Decimal text. */
  readonly value: string;
  readonly format: string;
  readonly role: CellRole;
  /** The name formulas call it by. */
  readonly name?: string;
}

/** A formula without its equals sign (OpenFormula), and what it comes to where that is known. */
export interface FormulaCell {
  readonly kind: 'formula';
  readonly formula: string;
  /** Decimal text; programs that do not calculate show it. */
  readonly value?: string;
  readonly format: string;
  readonly role: CellRole;
}

export type WorkbookCell = TextCell | NumberCell | FormulaCell;
/** Cells from the first column on; null leaves one empty. */
export type WorkbookRow = readonly (WorkbookCell | null)[];

export interface WorkbookSheet {
  /** At most 31 letters, none of []:*?/\ */
  readonly name: string;
  /** Widths of the columns, in digits of the text's size. */
  readonly widths: readonly number[];
  readonly rows: readonly WorkbookRow[];
  /** Rows on top that stay in view and are repeated on every printed page. */
  readonly headRows: number;
  /** Columns on the left that stay in view. */
  readonly headColumns: number;
}

/** A workbook as data: what stands in which cell, and how it prints. */
export interface Workbook {
  readonly title: string;
  /** Day the file says it was made on, YYYY-MM-DD; part of the input, so that the same input gives the same file. */
  readonly date: string;
  readonly paper: 'a4' | 'letter';
  readonly sheets: readonly WorkbookSheet[];
}

export function text(content: string, role: CellRole): TextCell {
  return { kind: 'text', text: content, role };
}
