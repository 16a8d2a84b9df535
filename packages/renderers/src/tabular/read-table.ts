import { readSeparatedText } from './read-separated-text.ts';
import { readWorkbook } from './read-workbook.ts';
import { type Table, TableUnreadableError } from './table.ts';

function beginsWith(bytes: Uint8Array, mark: readonly number[]): boolean {
  return mark.every((byte, index) => bytes[index] === byte);
}

/**
 * Opens a file of rows by what it is, not by its name: an XLSX workbook, or separated text in UTF-8, UTF-16 or
 * Windows-1252. Rows come one after the other; the whole table is never in memory. Empty rows are left out.
 * @throws TableUnreadableError, also while rows are read
 */
export async function readTable(bytes: Uint8Array): Promise<Table> {
  if (bytes.length === 0)
    throw new TableUnreadableError('is empty', 'Send a file with a row of headers and rows below it.');
  if (beginsWith(bytes, [0x50, 0x4b, 0x03, 0x04])) return readWorkbook(bytes);
  // The compound files that spreadsheets wrote before XLSX.
  if (beginsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0]))
    throw new TableUnreadableError('is an old binary workbook', 'Save it as XLSX or CSV and send it again.');
  if (beginsWith(bytes, [0x25, 0x50, 0x44, 0x46]))
    throw new TableUnreadableError('is a PDF', 'Ask for the list as XLSX or CSV, or paste its table.');
  return readSeparatedText(bytes);
}
