import type { Bill, BillProblem } from '../bill-of-materials/index.ts';
import { BILL_COLUMNS, type BillColumn } from './bill-columns.ts';
import type { BillRowProblem } from './row-cells.ts';

/** The line of the file that each row of a bill was read from. */
export type BillLines = Readonly<Record<keyof Bill, readonly number[]>>;

const COLUMNS_BY_PATH: Readonly<Record<string, BillColumn>> = {
  'edgeBand.material': 'band material',
  'veneer.material': 'veneer material',
};

/** A problem of the bill as one of the file it was read from: by line and column instead of a path into the bill. */
export function placeProblem({ field, message, mend }: BillProblem, lines: BillLines): BillRowProblem {
  const [kind = '', index = '', ...path] = field.split('.');
  const inKind = Object.entries(lines).find(([name]) => name === kind)?.[1] ?? [];
  const named = COLUMNS_BY_PATH[path.join('.')] ?? BILL_COLUMNS.find((column) => column === path[0]);
  return { line: inKind[Number(index)] ?? 0, column: named ?? 'row', message, mend };
}
