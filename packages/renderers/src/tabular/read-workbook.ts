import { Readable } from 'node:stream';
import ExcelJS from 'exceljs';
import { chunksOf } from './chunks.ts';
import { detectDecimalMark } from './detect-decimal-mark.ts';
import { lookAhead } from './look-ahead.ts';
import { type DecimalMark, type Table, type TableRow, TableUnreadableError } from './table.ts';
import { unpackedSize } from './zip-entries.ts';

const SAMPLE_ROWS = 200;
const MOST_UNPACKED_BYTES = 500 * 1024 * 1024;
const SAVE_AGAIN = 'Open it in a spreadsheet, save it as XLSX or CSV and send it again.';

type RawCell = string | number;
type RawRow = { number: number; cells: readonly RawCell[] };

function cellOf(value: ExcelJS.CellValue): RawCell {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') return value;
  if (typeof value === 'string') return value.trim();
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (value instanceof Date) return value.toISOString().slice(0, 10);
  if ('richText' in value)
    return value.richText
      .map(({ text }) => text)
      .join('')
      .trim();
  if ('hyperlink' in value) return value.text.trim();
  if ('error' in value) return value.error;
  return cellOf(value.result);
}

async function* readRows(bytes: Uint8Array, onTaken: (count: number) => void): AsyncGenerator<RawRow> {
  const reader = new ExcelJS.stream.xlsx.WorkbookReader(Readable.from(chunksOf(bytes, onTaken)), {
    worksheets: 'emit',
    sharedStrings: 'cache',
    styles: 'cache',
    hyperlinks: 'ignore',
    entries: 'ignore',
  });
  try {
    for await (const worksheet of reader) {
      for await (const row of worksheet) {
        const values = row.values;
        const cells = Array.isArray(values) ? Array.from(values.slice(1), cellOf) : [];
        if (cells.some((cell) => cell !== '')) yield { number: row.number, cells };
      }
      // Only the first sheet is the table; notes often follow it.
      return;
    }
  } catch (error) {
    throw new TableUnreadableError('is a broken workbook', SAVE_AGAIN, { cause: error });
  }
}

// Number cells carry doubles: 15 significant digits are what a spreadsheet keeps and shows.
function written(cell: RawCell, mark: DecimalMark): string {
  if (typeof cell === 'string') return cell;
  const text = Number(cell.toPrecision(15)).toString();
  const plain = text.includes('e')
    ? Number(text)
        .toFixed(12)
        .replace(/\.?0+$/, '')
    : text;
  return mark === 'comma' ? plain.replace('.', ',') : plain;
}

/** Opens the first sheet of an XLSX workbook; number cells are written with the mark its text cells use. */
export async function readWorkbook(bytes: Uint8Array): Promise<Table> {
  const size = unpackedSize(bytes);
  if (size === null) throw new TableUnreadableError('is a broken workbook', SAVE_AGAIN);
  if (size > MOST_UNPACKED_BYTES)
    throw new TableUnreadableError('unpacks to more than 500 MB', 'Split it into several workbooks.');
  let taken = 0;
  const read = readRows(bytes, (count) => {
    taken = count;
  });
  const { first, all } = await lookAhead(read, SAMPLE_ROWS);
  if (first.length === 0)
    throw new TableUnreadableError('has no rows on its first sheet', 'Put the table on the first sheet.');
  const texts = first.slice(1).flatMap(({ cells }) => cells.filter((cell) => typeof cell === 'string'));
  const decimalMark = detectDecimalMark(texts, 'point');
  const rows = async function* (): AsyncGenerator<TableRow> {
    for await (const { number, cells } of all)
      yield { number, cells: cells.map((cell) => written(cell, decimalMark)) };
  };
  return { format: 'xlsx', decimalMark, rows: rows(), bytesRead: () => taken };
}
