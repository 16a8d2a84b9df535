export type DecimalMark = 'point' | 'comma';
export const SEPARATORS = [',', ';', '\t', '|'] as const;
export type Separator = (typeof SEPARATORS)[number];
export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** A row with something in it; `number` is the line of the text, or the row of the sheet, where it begins. */
export interface TableRow {
  readonly number: number;
  readonly cells: readonly string[];
}

/** A file of rows, opened: what was found out about it, and its rows read one after the other, once. */
export interface Table {
  readonly format: 'csv' | 'xlsx';
  readonly decimalMark: DecimalMark;
  readonly separator?: Separator;
  readonly encoding?: TextEncoding;
  readonly rows: AsyncIterable<TableRow>;
  /** How many of the file's bytes have been taken in so far, for a reader that says how far it is. */
  readonly bytesRead: () => number;
}

/** Thrown when bytes are no table: says why and how to mend it. */
export class TableUnreadableError extends Error {
  readonly code = 'table-unreadable';
  constructor(
    readonly reason: string,
    readonly mend: string,
    options?: ErrorOptions,
  ) {
    super(`The file ${reason}. ${mend}`, options);
    this.name = 'TableUnreadableError';
  }
}

/** A cell to write: text as it is, a number as decimal text with a point. */
export type WrittenCell = string | { readonly number: string };
