import type { ReactNode } from 'react';
import type { Choice } from '../choice-list.tsx';
import type { FieldMessage } from '../field.tsx';

/** One row of a grid: the text of each cell as it was typed, by column. */
export interface GridRow {
  /** Stays with the row through every edit; nothing a person sees. */
  readonly key: string;
  readonly cells: Readonly<Record<string, string>>;
}

/** What a text means in a column: the text to keep and, while it is typed, a note on how it is read; or what is wrong. */
export type CellReading =
  | { readonly text: string; readonly note?: string }
  | { readonly error: FieldMessage };

export interface EditColumn {
  readonly id: string;
  readonly header: string;
  /**
   * `choice`: one of a list; `choices`: several, with spaces between; `details`: shows what has no column and opens the
   * row's form; `worked`: shows what is worked out about the row, and is typed into by nobody.
   */
  readonly kind: 'text' | 'choice' | 'choices' | 'yes-no' | 'details' | 'worked';
  readonly isNumeric?: boolean;
  /** px */
  readonly width: number;
  /** What can be chosen, for both kinds of choices. */
  readonly choices?: readonly Choice[];
  /** How a typed or pasted text is read; texts that cannot be read are kept as they are, with the error shown. */
  readonly read: (text: string) => CellReading;
  /** For `details` and `worked`: its text, as it is copied. */
  readonly shown?: (row: GridRow) => string;
  /** For `worked`: what is drawn instead of the text, such as a figure that opens its working. */
  readonly render?: (row: GridRow) => ReactNode;
  /** The column as it is in one row, where rows differ in what they hold; undefined: the empty row at the end. */
  readonly inRow?: (row: GridRow | undefined) => EditColumn;
}

/** What stands at the end of a cell beside its text, such as what a formula comes to, and in whole while it has the focus. */
export interface CellAside {
  readonly text: string;
  readonly note: string;
}

export function columnIn(column: EditColumn, row: GridRow | undefined): EditColumn {
  return column.inRow?.(row) ?? column;
}

/** Nothing can be put into its cells. */
const isShownOnly = ({ kind }: EditColumn): boolean => kind === 'details' || kind === 'worked';

export function cellText(row: GridRow, column: EditColumn): string {
  return row.cells[column.id] ?? '';
}

/** The cell as it is shown and copied. */
export function shownText(row: GridRow, column: EditColumn): string {
  const own = columnIn(column, row);
  if (isShownOnly(own)) return own.shown?.(row) ?? '';
  const text = cellText(row, column);
  const { kind, choices } = own;
  if (kind !== 'choice') return text;
  return choices?.find(({ id }) => id === text)?.label ?? text;
}

/** The row with a text put into a column, written the column's own way where it can be read. */
export function withText(row: GridRow, column: EditColumn, typed: string): GridRow {
  const own = columnIn(column, row);
  if (isShownOnly(own)) return row;
  const text = typed.trim();
  const reading = text === '' ? { text } : own.read(text);
  return { ...row, cells: { ...row.cells, [column.id]: 'error' in reading ? text : reading.text } };
}

/** The id of the choice a text names: its id or its label, whatever the case; null where it names none. */
export function choiceNamed(choices: readonly Choice[], text: string): string | null {
  const sought = text.trim().toLowerCase();
  const found =
    choices.find(({ id }) => id === text) ??
    choices.find(({ id }) => id.toLowerCase() === sought) ??
    choices.find(({ label }) => label.toLowerCase() === sought);
  return found?.id ?? null;
}

/** What is found for typed words: the one so named, those that begin with them, those that hold them anywhere. */
export function choicesFor(choices: readonly Choice[], typed: string): readonly Choice[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const first = words[0];
  if (first === undefined) return choices;
  const fits = choices.filter(({ id, label, note = '' }) => {
    const text = `${id} ${label} ${note}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
  const rank = ({ id, label }: Choice): number => {
    const names = [id.toLowerCase(), label.toLowerCase()];
    if (names.includes(typed.trim().toLowerCase())) return 0;
    return names.some((name) => name.startsWith(first)) ? 1 : 2;
  };
  return fits.toSorted((left, right) => rank(left) - rank(right));
}
