import { type GridArea, isInArea } from './grid-position.ts';

interface MarkedColumn {
  readonly isNumeric?: boolean;
}

/** What tells a body cell's place, look and selection; the first cell of a row is its head. */
export function cellMarks(row: number, column: number, { isNumeric }: MarkedColumn, area: GridArea | null) {
  return {
    ...(column === 0 ? { scope: 'row' as const } : {}),
    'data-row': row,
    'data-column': column,
    'data-is-numeric': isNumeric ? '' : undefined,
    'aria-selected': isInArea(area, row, column),
  };
}
