import type { GridArea } from '../data-table/grid-position.ts';
import { cellText, type EditColumn, type GridRow, shownText, withText } from './edit-column.ts';

type Rows = readonly GridRow[];
type Columns = readonly EditColumn[];

/** Every row of the area with the given change made to its cells in the area. */
function changed(
  rows: Rows,
  area: GridArea,
  columns: Columns,
  change: (row: GridRow, column: EditColumn) => GridRow,
): Rows {
  const touched = columns.slice(area.left, area.right + 1);
  return rows.map((row, at) => (at < area.top || at > area.bottom ? row : touched.reduce(change, row)));
}

/** The top row of the area in all rows below it; a single row takes what stands above it. */
export function filledDown(rows: Rows, area: GridArea, columns: Columns): Rows {
  const from = area.top === area.bottom ? area.top - 1 : area.top;
  const source = rows[from];
  if (source === undefined) return rows;
  return changed(rows, area, columns, (row, column) =>
    row === source ? row : withText(row, column, cellText(source, column)),
  );
}

/** The left column of the area in all columns right of it; a single column takes what stands left of it. */
export function filledRight(rows: Rows, area: GridArea, columns: Columns): Rows {
  const from = area.left === area.right ? area.left - 1 : area.left;
  const source = columns[from];
  if (source === undefined) return rows;
  // As it is shown: another column's choices are named by their labels.
  return changed(rows, area, columns, (row, column) =>
    column === source ? row : withText(row, column, shownText(row, source)),
  );
}

export function cleared(rows: Rows, area: GridArea, columns: Columns): Rows {
  return changed(rows, area, columns, (row, column) => withText(row, column, ''));
}
