import { Decimal } from '@scantling/decimals';
import { type LengthUnit, parseLength, UnreadableLengthError } from '@scantling/units';
import { type Formula, MOST_FORMULA_LETTERS } from '../design-parameters/index.ts';
import type { BillCells, BillColumn } from './bill-columns.ts';

/** One thing wrong with a row. */
export interface BillRowProblem {
  /** Line of the file, headers being line 1. */
  readonly line: number;
  readonly column: BillColumn;
  readonly message: string;
  readonly mend: string;
}

/** Reads the cells of one row, keeping every problem instead of stopping at the first. */
export class RowCells {
  readonly problems: BillRowProblem[] = [];
  readonly #cells: BillCells;
  readonly #line: number;
  readonly #unit: LengthUnit;

  constructor(cells: BillCells, line: number, unit: LengthUnit) {
    this.#cells = cells;
    this.#line = line;
    this.#unit = unit;
  }

  optional(column: BillColumn): string | undefined {
    const text = this.#cells[column]?.trim();
    return text === undefined || text === '' ? undefined : text;
  }

  text(column: BillColumn): string {
    return this.optional(column) ?? this.#fail(column, 'is empty', 'fill it in', '');
  }

  /** A decimal of at least 0 as text, or a formula; `fallback` for an empty cell, or none allowed without one. */
  number(column: BillColumn, fallback?: string): string | Formula {
    return this.optionalNumber(column) ?? fallback ?? this.#fail(column, 'is empty', 'enter a number', '0');
  }

  optionalNumber(column: BillColumn): string | Formula | undefined {
    return this.#formula(column) ?? this.plainNumber(column);
  }

  /** A decimal of at least 0 as text, which no formula can stand for. */
  plainNumber(column: BillColumn): string | undefined {
    const text = this.optional(column);
    return text === undefined ? undefined : this.#number(column, text);
  }

  whole(column: BillColumn, from: number, fallback?: number): number | Formula {
    const formula = this.#formula(column);
    if (formula !== undefined) return formula;
    const text = this.optional(column);
    if (text === undefined && fallback !== undefined) return fallback;
    if (text !== undefined && /^\d{1,6}$/.test(text) && Number(text) >= from) return Number(text);
    return this.#fail(
      column,
      text === undefined ? 'is empty' : `is "${text}"`,
      `enter a whole number from ${from}`,
      from,
    );
  }

  /** A share from 0 to 1, or a percentage ("5 %"). */
  optionalShare(column: BillColumn): string | undefined {
    const text = this.optional(column);
    if (text === undefined) return undefined;
    const isPercent = text.endsWith('%');
    const number = this.#number(column, isPercent ? text.slice(0, -1).trim() : text);
    const share = isPercent ? new Decimal(number).div(100) : new Decimal(number);
    if (share.lte(1)) return share.toString();
    return this.#fail(column, `is "${text}"`, 'enter a share from 0 to 1, or a percentage such as 5 %', '0');
  }

  length(column: BillColumn): string | Formula {
    return this.optionalLength(column) ?? this.#fail(column, 'is empty', 'enter a length', '0');
  }

  optionalLength(column: BillColumn): string | Formula | undefined {
    return this.#formula(column) ?? this.plainLength(column);
  }

  /** Millimetres, which no formula can stand for. */
  plainLength(column: BillColumn): string | undefined {
    const text = this.optional(column);
    return text === undefined ? undefined : this.lengthOf(column, text);
  }

  /** Millimetres of a text out of a cell. */
  lengthOf(column: BillColumn, text: string): string {
    try {
      return parseLength(text, this.#unit).toString();
    } catch (error) {
      if (!(error instanceof UnreadableLengthError)) throw error;
      return this.#fail(
        column,
        `is "${text}"`,
        'write a length such as 600, 60cm, 23 5/8 or 1\' 11 5/8"',
        '0',
      );
    }
  }

  oneOf<T extends string>(column: BillColumn, choices: readonly T[], fallback: T): T {
    const text = this.optional(column)?.toLowerCase();
    if (text === undefined) return fallback;
    return (
      choices.find((choice) => choice === text) ??
      this.#fail(column, `is "${text}"`, `write ${choices.join(', ')}`, fallback)
    );
  }

  /** Takes a problem that only the reader of the row can see. */
  fail(column: BillColumn, message: string, mend: string): void {
    this.problems.push({ line: this.#line, column, message, mend });
  }

  /** What stands behind a "=", which marks a formula as in a spreadsheet. */
  #formula(column: BillColumn): Formula | undefined {
    const text = this.optional(column);
    if (text === undefined || !text.startsWith('=')) return undefined;
    const formula = text.slice(1).trim();
    if (formula !== '' && formula.length <= MOST_FORMULA_LETTERS) return { formula };
    return this.#fail(
      column,
      formula === '' ? 'is a formula without content' : `is longer than ${MOST_FORMULA_LETTERS} letters`,
      'write a formula such as =length - 2 * leg',
      { formula: '1' },
    );
  }

  #number(column: BillColumn, text: string): string {
    const plain = /^\d+,\d+$/.test(text) ? text.replace(',', '.') : text;
    if (/^\d{1,12}(\.\d{1,12})?$/.test(plain)) return new Decimal(plain).toString();
    return this.#fail(column, `is "${text}"`, 'enter a number of 0 or more', '0');
  }

  #fail<T>(column: BillColumn, message: string, mend: string, instead: T): T {
    this.problems.push({ line: this.#line, column, message, mend });
    return instead;
  }
}
