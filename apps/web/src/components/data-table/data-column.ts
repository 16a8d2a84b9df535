import { Decimal } from '@scantling/decimals';

export type SortValue = string | number | Decimal | null;

/** One column of a DataTable. */
export interface DataColumn<Row> {
  readonly id: string;
  readonly header: string;
  /** The cell as text: copied, sorted by, and shown where there is no `render`. Plain decimals for figures. */
  readonly text: (row: Row) => string;
  readonly render?: (row: Row) => React.ReactNode;
  /** Sorts by this instead of the text; null stands last. False: not sortable. */
  readonly sortBy?: ((row: Row) => SortValue) | false;
  /** Figures: aligned at the end. */
  readonly isNumeric?: boolean;
  /** px; needed for tables of more than 100 rows, whose widths cannot follow from rows not drawn. */
  readonly width?: number;
  /** The cell of this column in the table's foot. */
  readonly total?: React.ReactNode;
}

const collator = new Intl.Collator(undefined, { numeric: true, sensitivity: 'base' });

/** The order of two values of one column; null last in either direction is the table's matter. */
export function compareValues(left: SortValue, right: SortValue): number {
  if (left === null || right === null) return left === right ? 0 : left === null ? 1 : -1;
  if (left instanceof Decimal && right instanceof Decimal) return left.comparedTo(right);
  if (typeof left === 'number' && typeof right === 'number') return left - right;
  return collator.compare(String(left), String(right));
}

export function sortValue<Row>(column: DataColumn<Row>, row: Row): SortValue {
  return column.sortBy ? column.sortBy(row) : column.text(row);
}
