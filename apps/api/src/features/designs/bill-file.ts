import {
  BILL_COLUMNS,
  type Bill,
  type BillCells,
  type BillRowProblem,
  matchBillHeaders,
  readBill,
  writeBill,
} from '@scantling/costing';
import { readTable, type Table, TableUnreadableError } from '@scantling/renderers';
import type { LengthUnit } from '@scantling/units';
import type { UploadedFile } from '../../handle.ts';

export interface BillFile {
  readonly bill: Bill | null;
  readonly problems: readonly (Omit<BillRowProblem, 'column'> & { readonly column: string })[];
  readonly ignoredHeaders: readonly string[];
}

const MOST_ROWS = 5000;

/** The unit a bare number means in a design's files. */
export function lengthUnitOf(unitSystem: string): LengthUnit {
  return unitSystem === 'imperial' ? 'in' : 'mm';
}

/** Reads a bill from an uploaded CSV or XLSX file. */
export async function readBillFile(file: UploadedFile, unit: LengthUnit): Promise<BillFile> {
  try {
    return await readRows(await readTable(await bytesOf(file)), unit);
  } catch (error) {
    if (!(error instanceof TableUnreadableError)) throw error;
    return wholeFile(error.reason, error.mend, []);
  }
}

async function bytesOf(file: UploadedFile): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of file.content) chunks.push(chunk);
  return Buffer.concat(chunks);
}

async function readRows(table: Table, unit: LengthUnit): Promise<BillFile> {
  let columns: ReturnType<typeof matchBillHeaders> | null = null;
  const ignoredHeaders: string[] = [];
  const rows: { line: number; cells: BillCells }[] = [];
  for await (const { number: line, cells } of table.rows) {
    if (columns === null) {
      const matched = matchBillHeaders(cells);
      columns = matched;
      ignoredHeaders.push(...cells.filter((header, at) => matched[at] === null && header.trim() !== ''));
      if (!matched.includes('row'))
        return wholeFile(
          'has no column "row"',
          `start it with the headers ${BILL_COLUMNS.slice(0, 6).join(', ')} ...`,
          ignoredHeaders,
        );
      continue;
    }
    if (rows.length === MOST_ROWS)
      return wholeFile(`has more than ${MOST_ROWS} rows`, 'split the design', ignoredHeaders);
    rows.push({
      line,
      cells: Object.fromEntries(
        columns.flatMap((column, at) => (column === null ? [] : [[column, cells[at] ?? '']])),
      ),
    });
  }
  if (columns === null) return wholeFile('is empty', 'write the headers in the first row', []);
  return { ...readBill(rows, unit), ignoredHeaders };
}

function wholeFile(message: string, mend: string, ignoredHeaders: readonly string[]): BillFile {
  return {
    bill: null,
    problems: [{ line: 0, column: '', message: `The file ${message}`, mend }],
    ignoredHeaders,
  };
}

/** A bill as rows of text, headers first. */
export function billTable(bill: Bill, unit: LengthUnit): string[][] {
  return [
    [...BILL_COLUMNS],
    ...writeBill(bill, unit).map((cells) => BILL_COLUMNS.map((column) => cells[column] ?? '')),
  ];
}
