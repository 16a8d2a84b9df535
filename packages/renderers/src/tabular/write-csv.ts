import { stringify } from 'csv-stringify/sync';
import { guardText } from './formula-guard.ts';
import type { WrittenCell } from './table.ts';

/**
 * Rows as CSV after RFC 4180, UTF-8 with a byte order mark so that spreadsheets read its letters. Text that a
 * spreadsheet would run as a formula gets an apostrophe in front; numbers, also negative ones, stay numbers.
 */
export function writeCsv(rows: readonly (readonly WrittenCell[])[]): string {
  const cells = rows.map((row) =>
    row.map((cell) => (typeof cell === 'string' ? guardText(cell) : cell.number)),
  );
  return stringify(cells, { bom: true, record_delimiter: '\r\n' });
}
