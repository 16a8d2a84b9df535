import { createSortedRowModel, rowSortingFeature, tableFeatures, useTable } from '@tanstack/react-table';
import { useMemo, useRef } from 'react';
import { fromTabSeparated } from '../../lib/tab-separated.ts';
import { copyArea } from './copy-area.ts';
import { compareValues, type DataColumn, sortValue } from './data-column.ts';
import { BodyRow, Gap, HeadRow, TotalRow } from './table-rows.tsx';
import { useGridFocus } from './use-grid-focus.ts';
import { useRowWindow } from './use-row-window.ts';
import './data-table.css';

const features = tableFeatures({ rowSortingFeature, sortedRowModel: createSortedRowModel() });
// A table may be a grid (ARIA in HTML, "table"), which the linter's own list does not know.
const GRID = { role: 'grid', 'aria-multiselectable': true } as const;

export interface DataTableProps<Row extends object> {
  /** Names the table. */
  readonly label: string;
  /** The first column names the row. Keep the list stable (module scope or useMemo). */
  readonly columns: readonly DataColumn<Row>[];
  readonly rows: readonly Row[];
  readonly rowId: (row: Row) => string;
  readonly initialSort?: { readonly column: string; readonly isDescending?: boolean };
  /** Enter on a cell without a control, and double click. */
  readonly onOpenRow?: (row: Row) => void;
  /** Cells pasted while the focus is on a cell of this row and column. */
  readonly onPasteCells?: (cells: string[][], at: { row: Row; column: string }) => void;
  /** The row drawn as chosen. */
  readonly currentRowId?: string | null;
  /** Shown where the rows would be. */
  readonly empty?: React.ReactNode;
  /** CSS height limit of the scrolling frame; 'none' lets the page scroll. */
  readonly maxHeight?: string;
}

export function DataTable<Row extends object>(props: DataTableProps<Row>) {
  const { columns, rows, rowId, onOpenRow, onPasteCells } = props;
  const frame = useRef<HTMLDivElement>(null);
  const tableRef = useRef<HTMLTableElement>(null);
  const definitions = useMemo(
    () =>
      columns.map((column) => ({
        id: column.id,
        accessorFn: (row: Row) => sortValue(column, row) ?? undefined,
        sortUndefined: 'last' as const,
        enableSorting: column.sortBy !== false,
        sortDescFirst: false,
        sortFn: (left: { original: Row }, right: { original: Row }) =>
          compareValues(sortValue(column, left.original), sortValue(column, right.original)),
      })),
    [columns],
  );
  const sort = props.initialSort;
  const table = useTable({
    features,
    columns: definitions,
    data: rows,
    getRowId: rowId,
    initialState: { sorting: sort ? [{ id: sort.column, desc: sort.isDescending ?? false }] : [] },
  });
  const sorted = table.getRowModel().rows;
  const { isWindowed, first, end, above, below, reveal } = useRowWindow(sorted.length, frame);
  const grid = useGridFocus(tableRef, { rows: sorted.length, columns: columns.length }, reveal);
  const here = sorted[grid.position.row]?.original;

  return (
    <div
      ref={frame}
      className="data-frame"
      style={{ maxHeight: props.maxHeight ?? (isWindowed ? '70vh' : 'none') }}
    >
      <table
        ref={tableRef}
        {...GRID}
        aria-label={props.label}
        aria-rowcount={sorted.length + 1}
        className="data-table"
        data-is-windowed={isWindowed ? '' : undefined}
        {...grid.handlers}
        onCopy={(event) => {
          if (event.target instanceof HTMLInputElement || !getSelection()?.isCollapsed) return;
          copyArea(event, grid.area, (row, column) => {
            const copied = sorted[row]?.original;
            return copied && (columns[column]?.text(copied) ?? '');
          });
        }}
        onPaste={(event) => {
          const column = columns[grid.position.column];
          if (!onPasteCells || !here || !column || event.target instanceof HTMLInputElement) return;
          event.preventDefault();
          onPasteCells(fromTabSeparated(event.clipboardData.getData('text/plain')), {
            row: here,
            column: column.id,
          });
        }}
        onDoubleClick={() => {
          if (here && onOpenRow) onOpenRow(here);
        }}
        onKeyUp={(event) => {
          if (event.key === 'Enter' && event.target instanceof HTMLTableCellElement && here)
            onOpenRow?.(here);
        }}
      >
        <colgroup>
          {columns.map((column) => (
            <col key={column.id} style={column.width === undefined ? {} : { width: column.width }} />
          ))}
        </colgroup>
        <thead>
          <HeadRow
            columns={columns}
            sortOf={(id) => table.getColumn(id)?.getIsSorted() ?? false}
            toggle={(id) => table.getColumn(id)?.toggleSorting()}
          />
        </thead>
        <Gap height={above} />
        <tbody>
          {sorted.slice(first, end).map((row, offset) => {
            const index = first + offset;
            return (
              <BodyRow
                key={row.id}
                row={row.original}
                index={index}
                columns={columns}
                isCurrent={row.id === props.currentRowId}
                area={grid.hasSelection ? grid.area : null}
              />
            );
          })}
          {sorted.length === 0 && (
            <tr>
              <td colSpan={columns.length}>{props.empty ?? 'Nothing here yet'}</td>
            </tr>
          )}
        </tbody>
        <Gap height={below} />
        {columns.some((column) => column.total !== undefined) && (
          <tfoot>
            <TotalRow columns={columns} />
          </tfoot>
        )}
      </table>
    </div>
  );
}
