import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import type { DraftState } from './bill-draft.ts';
import { BILL_FIELDS, type BillKind, KIND_WORDS } from './bill-fields.ts';
import { parameterFields, variantPath } from './parameter-fields.ts';

function isKind(name: string | undefined): name is BillKind {
  return name !== undefined && Object.hasOwn(BILL_FIELDS, name);
}

/** A value of a bill in words: "Parts, leg, Material". */
export function valueWords(kind: BillKind, row: string, path: string): string {
  const label = BILL_FIELDS[kind].find((one) => one.path === path)?.label ?? path;
  return [KIND_WORDS[kind].title, row, label].filter(Boolean).join(', ');
}

/** A value of a parameter in words: "Parameters, length, Least". */
export function parameterWords(id: string, path: string): string {
  const label = parameterFields('length').find((one) => one.path === path)?.label ?? path;
  return ['Parameters', id, label].filter(Boolean).join(', ');
}

/** A value of a variant in words: "Variants, Long, length". */
export function variantWords(name: string, of: string): string {
  return ['Variants', name, of].filter(Boolean).join(', ');
}

/** A cell, by its row and its path there. */
interface Place {
  readonly row: GridRow;
  readonly path: string;
}

/** The cell a path into the design leads to; one entry of a list is told at the list. */
export function placeIn(field: string, state: DraftState): Place | undefined {
  const [first, ...rest] = field.replace(/^bill\./, '').split('.');
  const [at, path = '', inner = ''] = rest;
  if (first === 'parameters') {
    const row = state.parameters[Number(at)];
    return row && { row, path };
  }
  if (first === 'variants') {
    const row = state.variants[Number(at)];
    const of = state.parameters.find(({ cells }) => cells.id === inner);
    return row && { row, path: path === 'values' && of ? variantPath(of) : 'name' };
  }
  if (!isKind(first)) return undefined;
  const row = state.bill[first][Number(at)];
  const whole = rest.slice(1).join('.');
  return row && { row, path: BILL_FIELDS[first].some((one) => one.path === whole) ? whole : path };
}

/** The place an error of the API names ("bill.parts.3.material"), in words. */
export function placeWords(field: string, state: DraftState): string {
  const [first, at = '', ...rest] = field.replace(/^bill\./, '').split('.');
  const cells = placeIn(field, state)?.row.cells;
  if (first === 'parameters') return parameterWords(cells?.id ?? at, rest[0] ?? '');
  if (first === 'variants') return variantWords(cells?.name ?? at, rest[1] ?? '');
  return isKind(first) ? valueWords(first, cells?.id ?? at, rest.join('.')) : field;
}
