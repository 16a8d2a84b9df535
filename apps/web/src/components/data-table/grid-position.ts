/** A cell by its place: row -1 is the head. */
export interface GridPosition {
  readonly row: number;
  readonly column: number;
}

export interface GridSize {
  readonly rows: number;
  readonly columns: number;
}

/** A rectangle of cells, borders included. */
export interface GridArea {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

const PAGE = 12;

const within = (value: number, least: number, most: number): number => Math.max(least, Math.min(most, value));

/** Where a key leads from a cell (APG grid pattern), or null when the key moves nothing. */
export function moved(
  from: GridPosition,
  key: string,
  isControl: boolean,
  size: GridSize,
): GridPosition | null {
  const lastRow = size.rows - 1;
  const lastColumn = size.columns - 1;
  const to = (row: number, column: number): GridPosition => ({
    row: within(row, -1, lastRow),
    column: within(column, 0, lastColumn),
  });
  switch (key) {
    case 'ArrowUp':
      return to(from.row - 1, from.column);
    case 'ArrowDown':
      return to(from.row + 1, from.column);
    case 'ArrowLeft':
      return to(from.row, from.column - 1);
    case 'ArrowRight':
      return to(from.row, from.column + 1);
    case 'PageUp':
      return to(Math.max(from.row - PAGE, 0), from.column);
    case 'PageDown':
      return to(from.row + PAGE, from.column);
    case 'Home':
      return isControl ? to(0, 0) : to(from.row, 0);
    case 'End':
      return isControl ? to(lastRow, lastColumn) : to(from.row, lastColumn);
    default:
      return null;
  }
}

/** The cells between two corners; the head is never part of it. */
export function areaBetween(one: GridPosition, other: GridPosition): GridArea {
  return {
    top: Math.max(0, Math.min(one.row, other.row)),
    bottom: Math.max(one.row, other.row),
    left: Math.min(one.column, other.column),
    right: Math.max(one.column, other.column),
  };
}

export function isInArea(area: GridArea | null, row: number, column: number): boolean {
  return (
    area !== null && row >= area.top && row <= area.bottom && column >= area.left && column <= area.right
  );
}
