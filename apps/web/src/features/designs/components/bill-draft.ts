import { type DrawnDesign, isFormula } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import { BILL_FIELDS, type BillKind, type BillRow, FRESH_CELLS } from './bill-fields.ts';
import { rowCells } from './bill-text.ts';
import { parameterRows } from './parameter-rows.ts';
import { parametersInSystem } from './parameters-in-system.ts';
import { readRow, readValue } from './read-row.ts';

/** A bill as it stands in the grids: the text of every cell, readable or not. */
export type BillDraft = Readonly<Record<BillKind, readonly GridRow[]>>;

/** A draft with the system its bare numbers are lengths in; what undo goes back and forth over. */
export interface DraftState {
  readonly unitSystem: LengthSystem;
  readonly bill: BillDraft;
  readonly parameters: readonly GridRow[];
  readonly variants: readonly GridRow[];
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

export function draftOf(design: DrawnDesign, unitSystem: LengthSystem): DraftState {
  const { bill } = design;
  const rowsOf = (kind: BillKind): GridRow[] => {
    const rows: readonly BillRow[] = bill[kind];
    return rows.map((row) => ({
      key: newIdempotencyKey(),
      cells: rowCells(row, BILL_FIELDS[kind], unitSystem),
    }));
  };
  return { unitSystem, bill: byKind(rowsOf), ...parameterRows(design, unitSystem) };
}

/** The same lengths written in the other system; what cannot be read stays as it was typed. */
export function inSystem(state: DraftState, next: LengthSystem): DraftState {
  const { unitSystem, bill } = state;
  if (unitSystem === next) return state;
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
    ...parametersInSystem(state, next),
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

/** A new row of a kind; a copy keeps all but the id, which `withIds` makes anew. */
export function freshRow(kind: BillKind, from?: GridRow): GridRow {
  const cells = from ? { ...from.cells, id: '' } : FRESH_CELLS[kind];
  return { key: newIdempotencyKey(), cells };
}
