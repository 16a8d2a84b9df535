import type { BillDraft } from './bill-draft.ts';
import { BILL_FIELDS, type BillKind, KIND_WORDS } from './bill-fields.ts';

export function isKind(name: string | undefined): name is BillKind {
  return name !== undefined && Object.hasOwn(BILL_FIELDS, name);
}

/** A value of a bill in words: "Parts, leg, Material". */
export function valueWords(kind: BillKind, row: string, path: string): string {
  const label = BILL_FIELDS[kind].find((one) => one.path === path)?.label ?? path;
  return [KIND_WORDS[kind].title, row, label].filter(Boolean).join(', ');
}

/** The place an error of the API names ("bill.parts.3.material"), in words. */
export function placeWords(field: string, bill: BillDraft): string {
  const [kind, at, ...rest] = field.replace(/^bill\./, '').split('.');
  if (!isKind(kind)) return field;
  return valueWords(kind, bill[kind][Number(at)]?.cells.id ?? at ?? '', rest.join('.'));
}
