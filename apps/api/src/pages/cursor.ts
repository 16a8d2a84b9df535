import { z } from 'zod';
import { fieldProblem } from '../problems/request-problem.ts';

const cursorSchema = z.array(z.string()).min(1);

/** An opaque cursor: the sort keys of the last item seen, so that a page is stable while rows come and go. */
export function writeCursor(keys: readonly string[]): string {
  return Buffer.from(JSON.stringify(keys)).toString('base64url');
}

/**
 * The sort keys in a cursor, undefined for the first page.
 * @throws RequestProblem input-invalid where it is no cursor of a list with that many keys
 */
export function readCursor(cursor: string | undefined, keyCount: number): string[] | undefined {
  if (cursor === undefined) return undefined;
  try {
    const keys = cursorSchema.parse(JSON.parse(Buffer.from(cursor, 'base64url').toString('utf8')));
    if (keys.length === keyCount) return keys;
  } catch {
    // Falls through to the one answer for every cursor that is not ours.
  }
  throw fieldProblem('query.cursor', 'is no cursor of this list', 'Send the `next` of the page before.');
}

/**
 * Cuts `limit + 1` fetched rows into a page.
 * @param keysOf the sort keys of a row, ending with one that is unique
 */
export function toPage<Row, Item>(
  rows: readonly Row[],
  limit: number,
  keysOf: (row: Row) => readonly string[],
  toItem: (row: Row) => Item,
): { items: Item[]; next: string | null } {
  const shown = rows.slice(0, limit);
  const last = shown.at(-1);
  const hasMore = rows.length > limit && last !== undefined;
  return { items: shown.map(toItem), next: hasMore ? writeCursor(keysOf(last)) : null };
}
