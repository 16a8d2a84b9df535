import { findHeaders } from '../header-row.ts';
import { BILL_COLUMNS, type BillColumn, type RowKind } from './bill-columns.ts';

/** Which header of a file holds which column of a bill, by the header's text, so that moved columns are found again. */
export interface BillMapping {
  readonly columns: Readonly<Partial<Record<BillColumn, string>>>;
  /** What every row is, for a list of parts (or of hardware ...) that has no column `row`. */
  readonly rowKind?: RowKind;
}

/** What drawing programs and people call them (common practice, no source), besides our own names. */
const OTHER_WORDS: Readonly<Partial<Record<BillColumn, readonly string[]>>> = {
  row: ['kind', 'row kind'],
  id: ['no', 'number', 'part no', 'part number', 'item', 'item no', 'pos', 'mark'],
  name: ['description', 'part', 'part name', 'title', 'label', 'bezeichnung'],
  assembly: ['subassembly', 'group', 'parent'],
  quantity: ['qty', 'count', 'pcs', 'pieces', 'number off', 'anzahl', 'menge'],
  material: ['stock', 'species', 'material code', 'werkstoff'],
  length: ['l', 'finished length', 'länge'],
  width: ['w', 'finished width', 'breite'],
  thickness: ['t', 'th', 'thk', 'finished thickness', 'dicke', 'stärke'],
  grain: ['grain direction'],
  grade: ['labour grade', 'labor grade'],
};

/** Columns without which no row of a kind can be read. */
const NEEDED: Readonly<Record<RowKind, readonly BillColumn[]>> = {
  parameter: ['id', 'name', 'value'],
  variant: ['id', 'name', 'values'],
  assembly: ['id', 'name'],
  part: ['id', 'name', 'quantity', 'material', 'length', 'width', 'thickness'],
  component: ['id', 'name', 'quantity', 'material'],
  finish: ['id', 'name', 'material', 'coats'],
  consumable: ['id', 'name', 'material', 'quantity'],
  operation: ['id', 'name', 'grade'],
};

/** A header as compared: small letters and digits, a unit in brackets left out. */
function bare(text: string): string {
  return text
    .replace(/\(.*?\)|\[.*?\]/g, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '');
}

/** What the headers look like: our own names first, then other words; what says nothing known is left open. */
export function guessBillMapping(headers: readonly string[]): BillMapping {
  const plain = headers.map(bare);
  const taken = new Set<number>();
  const columns: Partial<Record<BillColumn, string>> = {};
  const take = (column: BillColumn, words: readonly string[]) => {
    for (const word of words) {
      const place = plain.indexOf(bare(word));
      const header = headers[place];
      if (header === undefined || taken.has(place) || columns[column] !== undefined) continue;
      taken.add(place);
      columns[column] = header;
    }
  };
  for (const column of BILL_COLUMNS) take(column, [column]);
  for (const column of BILL_COLUMNS) take(column, OTHER_WORDS[column] ?? []);
  return { columns };
}

/** Where each mapped column stands in a row, counted from 0; a header the file lacks has no place. */
export function placeBillColumns(
  mapping: BillMapping,
  headers: readonly string[],
): ReadonlyMap<BillColumn, number> {
  const plain = headers.map(bare);
  const places = new Map<BillColumn, number>();
  for (const column of BILL_COLUMNS) {
    const header = mapping.columns[column];
    const place = header === undefined ? -1 : plain.indexOf(bare(header));
    if (place >= 0) places.set(column, place);
  }
  return places;
}

/** The columns without which the rows cannot be read and which the mapping does not find in the file. */
export function missingBillColumns(mapping: BillMapping, headers: readonly string[]): BillColumn[] {
  const places = placeBillColumns(mapping, headers);
  const needed: readonly BillColumn[] =
    mapping.rowKind === undefined ? ['row', 'id', 'name'] : NEEDED[mapping.rowKind];
  return needed.filter((column) => !places.has(column));
}

/**
 * The mapping a file is read with: one that was kept, where the file has every header it names, with what else the
 * headers look like; otherwise what they look like.
 */
export function chooseBillMapping(headers: readonly string[], kept: BillMapping | undefined): BillMapping {
  const guessed = guessBillMapping(headers);
  if (kept === undefined || !fitsAll(kept, headers)) return guessed;
  const used = new Set(Object.values(kept.columns).map(bare));
  const further = Object.entries(guessed.columns).filter(([, header]) => !used.has(bare(header)));
  return { ...kept, columns: { ...Object.fromEntries(further), ...kept.columns } };
}

function fitsAll(kept: BillMapping, headers: readonly string[]): boolean {
  const isFound = placeBillColumns(kept, headers).size === Object.keys(kept.columns).length;
  return isFound && missingBillColumns(kept, headers).length === 0;
}

/**
 * The row that holds the headers: titles and dates may stand above it.
 * @param rows the first rows of the file
 * @returns its index
 */
export function findBillHeaders(rows: readonly (readonly string[])[], kept: BillMapping | undefined): number {
  const fits = (cells: readonly string[]) =>
    (kept !== undefined && fitsAll(kept, cells)) || Object.keys(guessBillMapping(cells).columns).length >= 3;
  return findHeaders(rows, fits);
}
