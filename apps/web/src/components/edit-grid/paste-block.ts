import type { GridArea } from '../data-table/grid-position.ts';
import { type EditColumn, type GridRow, withText } from './edit-column.ts';

export interface Pasted {
  readonly rows: readonly GridRow[];
  /** Where the block went. */
  readonly area: GridArea;
  /** Columns of the block that found no place to the right. */
  readonly columnsLeftOut: number;
}

/**
 * Puts a block of cells into the rows from the area's first corner on; rows are added where the block reaches beyond
 * the last. A block smaller than the area is repeated as often as it fits whole, as one value or one row fills a
 * selection.
 */
export function pasted(
  rows: readonly GridRow[],
  area: GridArea,
  block: readonly (readonly string[])[],
  columns: readonly EditColumn[],
  freshRow: () => GridRow,
): Pasted {
  const width = Math.max(0, ...block.map((cells) => cells.length));
  const height = block.length;
  if (width === 0) return { rows, area, columnsLeftOut: 0 };
  const repeated = (size: number, room: number) => size * Math.max(1, Math.floor(room / size));
  const rowsTaken = repeated(height, area.bottom - area.top + 1);
  const columnsTaken = repeated(width, area.right - area.left + 1);
  const grown = [...rows];
  while (grown.length < area.top + rowsTaken) grown.push(freshRow());
  for (let down = 0; down < rowsTaken; down += 1) {
    const cells = block[down % height] ?? [];
    let row = grown[area.top + down];
    for (let along = 0; along < columnsTaken; along += 1) {
      const column = columns[area.left + along];
      const text = cells[along % width];
      if (row !== undefined && column !== undefined && text !== undefined) row = withText(row, column, text);
    }
    if (row !== undefined) grown[area.top + down] = row;
  }
  const last = Math.min(area.left + columnsTaken, columns.length) - 1;
  return {
    rows: grown,
    area: { ...area, bottom: area.top + rowsTaken - 1, right: last },
    columnsLeftOut: Math.max(0, area.left + width - columns.length),
  };
}
