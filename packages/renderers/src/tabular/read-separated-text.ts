import { Readable } from 'node:stream';
import { CsvError, parse } from 'csv-parse';
import { decodeText, detectEncoding } from './decode-text.ts';
import { detectDecimalMark } from './detect-decimal-mark.ts';
import { detectSeparator } from './detect-separator.ts';
import { unguardText } from './formula-guard.ts';
import { lookAhead } from './look-ahead.ts';
import {
  type Separator,
  type Table,
  type TableRow,
  TableUnreadableError,
  type TextEncoding,
} from './table.ts';

const SAMPLE_ROWS = 200;
const MOST_LETTERS_PER_ROW = 100_000;

/** Line breaks inside the cells of a row, where they stand between quotes. */
function breaksIn(cells: readonly string[]): number {
  let breaks = 0;
  for (const cell of cells) if (cell.includes('\n')) breaks += cell.split('\n').length - 1;
  return breaks;
}

function firstText(bytes: Uint8Array, encoding: TextEncoding): string {
  for (const piece of decodeText(bytes, encoding)) return piece;
  return '';
}

async function* readRows(
  bytes: Uint8Array,
  encoding: TextEncoding,
  separator: Separator,
  onTaken: (count: number) => void,
): AsyncGenerator<TableRow> {
  const parser = Readable.from(decodeText(bytes, encoding, onTaken)).pipe(
    parse({
      delimiter: separator,
      relax_column_count: true,
      relax_quotes: true,
      max_record_size: MOST_LETTERS_PER_ROW,
    }),
  );
  let begins = 1;
  try {
    for await (const record of parser as AsyncIterable<string[]>) {
      const cells = record.map((cell) => unguardText(cell.trim()));
      if (cells.some((cell) => cell !== '')) yield { number: begins, cells };
      begins += 1 + breaksIn(record);
    }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const where = `cannot be read as rows from line ${begins} on`;
    throw new TableUnreadableError(where, 'Close every quotation mark in that line and send it again.', {
      cause: error,
    });
  } finally {
    parser.destroy();
  }
}

/** Opens comma, semicolon, tab or bar separated text, also as pasted from a spreadsheet. */
export async function readSeparatedText(bytes: Uint8Array): Promise<Table> {
  const encoding = detectEncoding(bytes);
  const separator = detectSeparator(firstText(bytes, encoding));
  let taken = 0;
  const read = readRows(bytes, encoding, separator, (count) => {
    taken = count;
  });
  const { first, all } = await lookAhead(read, SAMPLE_ROWS);
  if (first.length === 0)
    throw new TableUnreadableError('has no rows', 'Send a file with a row of headers and rows below it.');
  if (first.some(({ cells }) => cells.some((cell) => cell.includes('\0'))))
    throw new TableUnreadableError('is no text', 'Save it as CSV or XLSX and send it again.');
  const decimalMark = detectDecimalMark(
    first.slice(1).flatMap(({ cells }) => cells),
    separator === ';' ? 'comma' : 'point',
  );
  return { format: 'csv', encoding, separator, decimalMark, rows: all, bytesRead: () => taken };
}
