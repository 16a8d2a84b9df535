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

type Parsed = { record: string[]; info: { lines: number } };

function firstText(bytes: Uint8Array, encoding: TextEncoding): string {
  for (const piece of decodeText(bytes, encoding)) return piece;
  return '';
}

async function* readRows(
  bytes: Uint8Array,
  encoding: TextEncoding,
  separator: Separator,
): AsyncGenerator<TableRow> {
  const parser = Readable.from(decodeText(bytes, encoding)).pipe(
    parse({
      delimiter: separator,
      info: true,
      relax_column_count: true,
      relax_quotes: true,
      max_record_size: MOST_LETTERS_PER_ROW,
    }),
  );
  let begins = 1;
  try {
    for await (const { record, info } of parser as AsyncIterable<Parsed>) {
      const cells = record.map((cell) => unguardText(cell.trim()));
      if (cells.some((cell) => cell !== '')) yield { number: begins, cells };
      begins = info.lines + 1;
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
  const { first, all } = await lookAhead(readRows(bytes, encoding, separator), SAMPLE_ROWS);
  if (first.length === 0)
    throw new TableUnreadableError('has no rows', 'Send a file with a row of headers and rows below it.');
  if (first.some(({ cells }) => cells.some((cell) => cell.includes('\0'))))
    throw new TableUnreadableError('is no text', 'Save it as CSV or XLSX and send it again.');
  const decimalMark = detectDecimalMark(
    first.slice(1).flatMap(({ cells }) => cells),
    separator === ';' ? 'comma' : 'point',
  );
  return { format: 'csv', encoding, separator, decimalMark, rows: all };
}
