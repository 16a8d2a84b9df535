import { cellMarks } from './cell-marks.ts';
import type { DataColumn } from './data-column.ts';
import type { GridArea } from './grid-position.ts';
import './data-table.css';

interface HeadRowProps<Row> {
  readonly columns: readonly DataColumn<Row>[];
  readonly sortOf: (column: string) => false | 'asc' | 'desc';
  readonly toggle: (column: string) => void;
}

const ARIA_SORT = { asc: 'ascending', desc: 'descending' } as const;

export function HeadRow<Row>({ columns, sortOf, toggle }: HeadRowProps<Row>) {
  return (
    <tr aria-rowindex={1}>
      {columns.map((column, at) => {
        const sort = sortOf(column.id);
        return (
          <th
            key={column.id}
            scope="col"
            data-row={-1}
            data-column={at}
            data-is-numeric={column.isNumeric ? '' : undefined}
            aria-sort={sort ? ARIA_SORT[sort] : undefined}
          >
            {column.sortBy === false ? (
              column.header
            ) : (
              <button type="button" className="sort-button" onClick={() => toggle(column.id)}>
                {column.header}
                <span aria-hidden="true" className="sort-mark">
                  {sort === 'asc' ? '↑' : sort === 'desc' ? '↓' : ''}
                </span>
              </button>
            )}
          </th>
        );
      })}
    </tr>
  );
}

interface BodyRowProps<Row> {
  readonly row: Row;
  readonly index: number;
  readonly columns: readonly DataColumn<Row>[];
  readonly isCurrent: boolean;
  readonly area: GridArea | null;
}

export function BodyRow<Row>({ row, index, columns, isCurrent, area }: BodyRowProps<Row>) {
  return (
    <tr aria-rowindex={index + 2} data-is-current={isCurrent ? '' : undefined}>
      {columns.map((column, at) => {
        const Cell = at === 0 ? 'th' : 'td';
        return (
          <Cell key={column.id} {...cellMarks(index, at, column, area)}>
            {column.render ? column.render(row) : column.text(row)}
          </Cell>
        );
      })}
    </tr>
  );
}

export function TotalRow<Row>({ columns }: { readonly columns: readonly DataColumn<Row>[] }) {
  return (
    <tr>
      {columns.map((column, at) => {
        const Cell = at === 0 ? 'th' : 'td';
        return (
          <Cell key={column.id} data-column={at} data-is-numeric={column.isNumeric ? '' : undefined}>
            {column.total}
          </Cell>
        );
      })}
    </tr>
  );
}

/** Stands for the rows that are not drawn, so that the scroll bar is true. */
export function Gap({ height }: { readonly height: number }) {
  if (height <= 0) return null;
  return (
    <tbody aria-hidden="true">
      <tr style={{ height }} />
    </tbody>
  );
}
