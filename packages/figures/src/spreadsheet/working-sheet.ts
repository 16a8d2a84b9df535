import type { FigureNode } from '../table.ts';
import { numberFormat, unitLabel } from './number-format.ts';
import { text, type WorkbookRow, type WorkbookSheet } from './workbook.ts';

export const WORKING = 'Working';
const HEAD_ROWS = 3;
const MOST_WORDS = 240;

interface WorkingLine extends Pick<FigureNode, 'label' | 'unit' | 'currency' | 'note'> {
  readonly formula: string;
  /** Decimal text, where it is known. */
  readonly value?: string;
  /** How it is worked out, in words. */
  readonly words: string;
}

function shortened(words: string): string {
  if (words.length <= MOST_WORDS) return words;
  return `${words.slice(0, words.lastIndexOf(' ', MOST_WORDS))} …`;
}

/** Everything that is derived, a row each; a row only uses rows above it. */
export class WorkingSheet {
  readonly #rows: WorkbookRow[] = [];
  #heading: string | null = null;

  /** What follows stands under this heading, which is written once there is something to stand below it. */
  begin(title: string): void {
    this.#heading = title;
  }

  /** Adds a row and answers its value's cell, as formulas of this sheet write it. */
  add(line: WorkingLine): string {
    if (this.#heading !== null) this.#rows.push([text(this.#heading, 'heading')]);
    this.#heading = null;
    const { label, unit, currency, note = '', formula, value, words } = line;
    const format = numberFormat(unit, currency, label);
    this.#rows.push([
      text(label, 'label'),
      { kind: 'formula', formula, format, role: 'value', ...(value === undefined ? {} : { value }) },
      text(unitLabel(unit, currency, label), 'unit'),
      text(shortened(words), 'remark'),
      text(note, 'remark'),
    ]);
    return `B${HEAD_ROWS + this.#rows.length}`;
  }

  sheet(): WorkbookSheet {
    const head = ['Figure', 'Value', 'Unit', 'How it is worked out', 'Remark'];
    return {
      name: WORKING,
      widths: [56, 16, 14, 90, 40],
      headRows: HEAD_ROWS,
      headColumns: 2,
      rows: [
        [text('Working', 'title')],
        [text('Each row only uses rows above it and cells of the sheet Inputs.', 'fact')],
        head.map((title) => text(title, title === 'Value' ? 'number-head' : 'column-head')),
        ...this.#rows,
      ],
    };
  }
}
