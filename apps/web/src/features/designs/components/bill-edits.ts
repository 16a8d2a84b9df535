import type { Bill } from '@scantling/costing';
import { BILL_FIELDS, type BillKind, type BillRow, KIND_WORDS } from './bill-fields.ts';

/** Puts the one row of `read` in place of the row with this id, or at the end where there is none. */
export function putRow(bill: Bill, kind: BillKind, id: string | null, read: Bill): Bill {
  const rows: readonly BillRow[] = bill[kind];
  const put: readonly BillRow[] = read[kind];
  const next = id === null ? [...rows, ...put] : rows.flatMap((row) => (row.id === id ? put : [row]));
  return { ...bill, [kind]: next };
}

export function removeRow(bill: Bill, kind: BillKind, id: string): Bill {
  const rows: readonly BillRow[] = bill[kind];
  return { ...bill, [kind]: rows.filter((row) => row.id !== id) };
}

function isKind(name: string | undefined): name is BillKind {
  return name !== undefined && Object.hasOwn(BILL_FIELDS, name);
}

/** The place an error names ("bill.parts.3.material"), in words: "Parts, leg, Material". */
export function placeWords(field: string, bill: Bill): string {
  const [kind, at, ...rest] = field.replace(/^bill\./, '').split('.');
  if (!isKind(kind)) return field;
  const row = bill[kind][Number(at)];
  const path = rest.join('.');
  const label = BILL_FIELDS[kind].find((one) => one.path === path)?.label ?? path;
  return [KIND_WORDS[kind].title, row?.id ?? at, label].filter(Boolean).join(', ');
}
