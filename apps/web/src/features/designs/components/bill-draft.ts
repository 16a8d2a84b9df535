import { type DrawnBill, isFormula } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import { BILL_FIELDS, type BillKind, type BillRow, FRESH_CELLS } from './bill-fields.ts';
import { rowCells } from './bill-text.ts';
import { readRow, readValue } from './read-row.ts';

/** A bill as it stands in the grids: the text of every cell, readable or not. */
export type BillDraft = Readonly<Record<BillKind, readonly GridRow[]>>;

/** A draft with the system its bare numbers are lengths in; what undo goes back and forth over. */
export interface DraftState {
  readonly unitSystem: LengthSystem;
  readonly bill: BillDraft;
}

export function byKind<Value>(of: (kind: BillKind) => Value): Record<BillKind, Value> {
  return {
    assemblies: of('assemblies'),
    parts: of('parts'),
    components: of('components'),
    finishes: of('finishes'),
    consumables: of('consumables'),
    operations: of('operations'),
  };
}

export function draftOf(bill: DrawnBill, unitSystem: LengthSystem): DraftState {
  const rowsOf = (kind: BillKind): GridRow[] => {
    const rows: readonly BillRow[] = bill[kind];
    return rows.map((row) => ({
      key: newIdempotencyKey(),
      cells: rowCells(row, BILL_FIELDS[kind], unitSystem),
    }));
  };
  return { unitSystem, bill: byKind(rowsOf) };
}

/** The same lengths written in the other system; what cannot be read stays as it was typed. */
export function inSystem({ unitSystem, bill }: DraftState, next: LengthSystem): DraftState {
  if (unitSystem === next) return { unitSystem, bill };
  const rewritten = (kind: BillKind, row: GridRow): GridRow => {
    const read = readRow(kind, row.cells, unitSystem);
    const whole: readonly BillRow[] = read.bill?.[kind] ?? [];
    const [only] = whole;
    if (only) return { ...row, cells: rowCells(only, BILL_FIELDS[kind], next) };
    const cells = Object.fromEntries(
      Object.entries(row.cells).map(([path, text]) => [path, withUnit(kind, path, text, unitSystem)]),
    );
    return { ...row, cells };
  };
  return {
    unitSystem: next,
    bill: byKind((kind) => bill[kind].map((row) => rewritten(kind, row))),
  };
}

/** A bare length with the unit it was typed in. */
function withUnit(kind: BillKind, path: string, text: string, system: LengthSystem): string {
  const field = BILL_FIELDS[kind].find((one) => one.path === path);
  if (field?.form !== 'length' || text === '') return text;
  try {
    const value = readValue(field, text, system);
    return isFormula(value) ? text : `${value} mm`;
  } catch {
    return text;
  }
}

const slugOf = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 36);

function freeId(wanted: string, taken: ReadonlySet<string>): string {
  let id = wanted;
  for (let count = 2; taken.has(id); count += 1) id = `${wanted}-${count}`;
  return id;
}

/** Gives every named row without an id one made of its name, and one of its own to each copy. */
export function withIds(rows: readonly GridRow[]): readonly GridRow[] {
  const taken = new Set(rows.map(({ cells }) => cells.id ?? '').filter(Boolean));
  return rows.map((row) => {
    const slug = slugOf(row.cells.name ?? '');
    if ((row.cells.id ?? '') !== '' || slug === '') return row;
    const id = freeId(slug, taken);
    taken.add(id);
    return { ...row, cells: { ...row.cells, id } };
  });
}

/** A new row of a kind; a copy keeps all but the id, which `withIds` makes anew. */
export function freshRow(kind: BillKind, from?: GridRow): GridRow {
  const cells = from ? { ...from.cells, id: '' } : FRESH_CELLS[kind];
  return { key: newIdempotencyKey(), cells };
}
