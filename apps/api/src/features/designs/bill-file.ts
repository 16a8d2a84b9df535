import {
  BILL_COLUMNS,
  type BillColumn,
  type BillLines,
  type BillMapping,
  type BillRowProblem,
  chooseBillMapping,
  type DrawnDesign,
  findBillHeaders,
  missingBillColumns,
  placeBillColumns,
  readBill,
  writeBill,
} from '@scantling/costing';
import { readTable, type TableRow, TableUnreadableError } from '@scantling/renderers';
import type { LengthUnit } from '@scantling/units';
import type { UploadedFile } from '../../handle.ts';

export interface BillFile {
  readonly drawing: DrawnDesign | null;
  readonly problems: readonly (Omit<BillRowProblem, 'column'> & { readonly column: string })[];
  readonly ignoredHeaders: readonly string[];
  readonly headers: readonly string[];
  readonly mapping: BillMapping | null;
  readonly missingColumns: readonly BillColumn[];
  /** Where in the file each row of the bill stands. */
  readonly lines: BillLines | null;
}

/** Which column is which: as a person says now, or as one said for an earlier file. */
export interface BillMatching {
  readonly said?: BillMapping | undefined;
  readonly kept?: BillMapping | undefined;
}

const MOST_ROWS = 5000;
const HEADER_SEARCH_ROWS = 20;

/** The unit a bare number means in a design's files. */
export function lengthUnitOf(unitSystem: string): LengthUnit {
  return unitSystem === 'imperial' ? 'in' : 'mm';
}

/** Reads a bill from an uploaded CSV or XLSX file. */
export async function readBillFile(
  file: UploadedFile,
  unit: LengthUnit,
  matching: BillMatching = {},
): Promise<BillFile> {
  try {
    const rows: TableRow[] = [];
    const table = await readTable(await bytesOf(file));
    for await (const row of table.rows) {
      if (rows.length > MOST_ROWS) return unread(`has more than ${MOST_ROWS} rows`, 'split the design');
      rows.push(row);
    }
    return readRows(rows, unit, matching);
  } catch (error) {
    if (!(error instanceof TableUnreadableError)) throw error;
    return unread(error.reason, error.mend);
  }
}

async function bytesOf(file: UploadedFile): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of file.content) chunks.push(chunk);
  return Buffer.concat(chunks);
}

function readRows(rows: readonly TableRow[], unit: LengthUnit, { said, kept }: BillMatching): BillFile {
  const first = rows.slice(0, HEADER_SEARCH_ROWS).map(({ cells }) => cells);
  const at = findBillHeaders(first, said ?? kept);
  const headers = first[at] ?? [];
  const mapping = said ?? chooseBillMapping(headers, kept);
  const places = placeBillColumns(mapping, headers);
  const used = new Set(places.values());
  const found = {
    headers,
    mapping,
    missingColumns: missingBillColumns(mapping, headers),
    ignoredHeaders: headers.filter((header, place) => header.trim() !== '' && !used.has(place)),
  };
  if (found.missingColumns.length > 0) return { ...found, drawing: null, problems: [], lines: null };
  const numbered = rows.slice(at + 1).map(({ number: line, cells }) => ({
    line,
    cells: Object.fromEntries([...places].map(([column, place]) => [column, cells[place] ?? ''])),
  }));
  return { ...found, ...readBill(numbered, unit, mapping.rowKind) };
}

/** Nothing of the file can be used; line 0 is the file as a whole. */
function unread(message: string, mend: string): BillFile {
  return {
    drawing: null,
    problems: [{ line: 0, column: '', message: `The file ${message}`, mend }],
    ignoredHeaders: [],
    headers: [],
    mapping: null,
    missingColumns: [],
    lines: null,
  };
}

/** A design's bill, parameters and variants as rows of text, headers first. */
export function billTable(drawing: DrawnDesign, unit: LengthUnit): string[][] {
  return [
    [...BILL_COLUMNS],
    ...writeBill(drawing, unit).map((cells) => BILL_COLUMNS.map((column) => cells[column] ?? '')),
  ];
}
