import type { BillProblem } from '../bill-of-materials/index.ts';
import type { DrawnBill } from '../design-parameters/index.ts';
import { BILL_COLUMNS, type BillColumn } from './bill-columns.ts';
import type { BillRowProblem } from './row-cells.ts';

/** The line of the file that each row of a bill, each parameter and each variant was read from. */
export type BillLines = Readonly<Record<keyof DrawnBill | 'parameters' | 'variants', readonly number[]>>;

const COLUMNS_BY_PATH: Readonly<Record<string, BillColumn>> = {
  'edgeBand.material': 'band material',
  'edgeBand.thickness': 'band thickness',
  'veneer.material': 'veneer material',
  'veneer.thickness': 'veneer thickness',
  lengthAllowance: 'length allowance',
  widthAllowance: 'width allowance',
  dryFilmUm: 'dry film um',
  batchRest: 'batch rest l',
  setupHours: 'setup h',
  runHours: 'run h',
  runHoursLow: 'run low h',
  runHoursHigh: 'run high h',
  elapsedHours: 'elapsed h',
};

/** A problem of the design as one of the file it was read from: by line and column instead of a path. */
export function placeProblem({ field, message, mend }: BillProblem, lines: BillLines): BillRowProblem {
  const [kind = '', index = '', ...path] = field.replace(/^bill\./, '').split('.');
  const inKind = Object.entries(lines).find(([name]) => name === kind)?.[1] ?? [];
  const named = COLUMNS_BY_PATH[path.join('.')] ?? BILL_COLUMNS.find((column) => column === path[0]);
  return { line: inKind[Number(index)] ?? 0, column: named ?? 'row', message, mend };
}
