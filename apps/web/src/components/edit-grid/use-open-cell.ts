import { useRef, useState } from 'react';
import type { GridPosition } from '../data-table/grid-position.ts';
import type { AfterEdit } from './cell-editor.tsx';
import { cellText, columnIn, type EditColumn, type GridRow } from './edit-column.ts';

interface OpenCell extends GridPosition {
  /** What is typed so far. */
  readonly text: string;
  readonly isTyped: boolean;
}

interface Surroundings {
  readonly rows: readonly GridRow[];
  readonly columns: readonly EditColumn[];
  /** Rows that can be reached, the empty one at the end included. */
  readonly count: number;
  readonly goTo: (to: GridPosition) => void;
  readonly put: (at: GridPosition, text: string) => void;
  readonly toggle: () => void;
  readonly onDetails: ((row: GridRow) => void) | undefined;
}

/** The cell after (1) or before (-1) a cell, row by row; null beyond the last and before the first. */
function neighbour(
  { row, column }: GridPosition,
  by: 1 | -1,
  columns: number,
  rows: number,
): GridPosition | null {
  const at = row * columns + column + by;
  return at < 0 || at >= rows * columns ? null : { row: Math.floor(at / columns), column: at % columns };
}

/**
 * Which cell is open and where taking its text leads. Tab goes from cell to cell once a cell was taken with it, and
 * Enter then goes back to the column where that began; any other move gives Tab back to the page.
 */
export function useOpenCell({ rows, columns, count, goTo, put, toggle, onDetails }: Surroundings) {
  const [open, setOpen] = useState<OpenCell | null>(null);
  const tabbedFrom = useRef<number | null>(null);

  const begin = (at: GridPosition, typed?: string): void => {
    const row = rows[at.row];
    const found = columns[at.column];
    const column = found && columnIn(found, row);
    if (column === undefined || at.row < 0 || column.kind === 'worked') return;
    if (column.kind === 'details') {
      if (row) onDetails?.(row);
    } else if (column.kind === 'yes-no' && typed === undefined) toggle();
    else setOpen({ ...at, text: typed ?? (row ? cellText(row, column) : ''), isTyped: typed !== undefined });
  };
  const step = (from: GridPosition, by: 1 | -1): boolean => {
    const to = neighbour(from, by, columns.length, count);
    if (to !== null) goTo(to);
    return to !== null;
  };
  const take = (text: string, then: AfterEdit): void => {
    if (open === null) return;
    setOpen(null);
    put(open, text);
    if (then === 'next' || then === 'before') {
      tabbedFrom.current ??= open.column;
      // The empty row may just have become a real one, with another below it.
      const to = neighbour(open, then === 'next' ? 1 : -1, columns.length, count + 1);
      goTo(to ?? open);
    } else if (then !== 'stay') {
      const column = tabbedFrom.current ?? open.column;
      tabbedFrom.current = null;
      goTo({ row: Math.max(0, open.row + (then === 'down' ? 1 : -1)), column });
    }
  };
  return {
    open,
    begin,
    take,
    setText: (text: string): void => setOpen((now) => now && { ...now, text, isTyped: true }),
    leave: (): void => {
      setOpen(null);
      if (open) goTo(open);
    },
    /** Tab between cells; false where Tab leads out of the grid. */
    tab: (from: GridPosition, by: 1 | -1): boolean => tabbedFrom.current !== null && step(from, by),
    endTabbing: (): void => {
      tabbedFrom.current = null;
    },
  };
}
