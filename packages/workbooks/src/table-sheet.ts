import { sumOf } from '@scantling/decimals';
import type { FormulaCell, WorkbookCell, WorkbookRow, WorkbookSheet } from '@scantling/figures';
import { moneyFormat, text } from '@scantling/figures';
import type { Currency } from '@scantling/money';

/** "A" for 0, "AB" for 27. */
function columnLetters(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : columnLetters(Math.floor(index / 26) - 1) + letter;
}

/** Rows of a sheet as they are added, so that totals know which rows they add up. */
export class TableSheet {
  readonly #rows: WorkbookRow[] = [];
  readonly #currency: Currency | null;

  constructor(head: readonly WorkbookRow[], currency: Currency | null) {
    this.#rows.push(...head);
    this.#currency = currency;
  }

  /** The number the next row gets. */
  get nextRow(): number {
    return this.#rows.length + 1;
  }

  add(...cells: readonly (WorkbookCell | null)[]): void {
    this.#rows.push(cells);
  }

  /** A table under a heading of its own. */
  begin(heading: string): void {
    if (this.#rows.at(-1)?.length !== 0) this.#rows.push([]);
    this.#rows.push([text(heading, 'heading')]);
  }

  /** A row that adds up columns from a row on, by formulas over the rows in between. */
  total(label: string, from: number, columns: readonly number[]): void {
    const to = this.#rows.length;
    const cells: (WorkbookCell | null)[] = [text(label, 'total-label')];
    for (const column of columns) {
      while (cells.length < column) cells.push(text('', 'total'));
      cells.push(this.#sumOf(column, from, to));
    }
    this.#rows.push(cells);
  }

  #sumOf(column: number, from: number, to: number): FormulaCell {
    const letters = columnLetters(column);
    const values = this.#rows.slice(from - 1, to).map((row) => {
      const cell = row[column];
      return cell?.kind === 'formula' ? (cell.value ?? '0') : '0';
    });
    return {
      kind: 'formula',
      formula: `SUM(${letters}${from}:${letters}${to})`,
      value: sumOf(values).toString(),
      format: moneyFormat(this.#currency),
      role: 'total',
    };
  }

  sheet(
    about: Pick<WorkbookSheet, 'name' | 'widths'> & { headRows: number; headColumns?: number },
  ): WorkbookSheet {
    return { headColumns: 1, ...about, rows: this.#rows };
  }
}
