import type { GridRow } from './edit-column.ts';

type Rows = readonly GridRow[];

/** Rows from `top` to `bottom`, both included. */
interface Span {
  readonly top: number;
  readonly bottom: number;
}

export function inserted(rows: Rows, at: number, fresh: Rows): Rows {
  return [...rows.slice(0, at), ...fresh, ...rows.slice(at)];
}

export function removed(rows: Rows, { top, bottom }: Span): Rows {
  return rows.filter((_, at) => at < top || at > bottom);
}

/** Copies stand below the last of the copied. */
export function duplicated(rows: Rows, { top, bottom }: Span, copy: (row: GridRow) => GridRow): Rows {
  return inserted(rows, bottom + 1, rows.slice(top, bottom + 1).map(copy));
}

/** One place up (-1) or down (1); at the edge nothing moves. */
export function movedBy(rows: Rows, { top, bottom }: Span, by: -1 | 1): Rows {
  if (top + by < 0 || bottom + by >= rows.length) return rows;
  const span = rows.slice(top, bottom + 1);
  return inserted(removed(rows, { top, bottom }), top + by, span);
}

/** The row taken from one place and put in another, the others closing up; at its own place nothing moves. */
export function movedTo(rows: Rows, from: number, to: number): Rows {
  const row = rows[from];
  if (row === undefined || from === to || to < 0 || to >= rows.length) return rows;
  return inserted(removed(rows, { top: from, bottom: from }), to, [row]);
}
