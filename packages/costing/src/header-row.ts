/**
 * The row that holds the headers of a table: titles and dates may stand above it. Where no row fits what is known, it
 * is the first of those with the most cells filled, since a title fills fewer than the headers do.
 * @param rows the first rows of the file
 * @returns its index; 0 where there are no rows
 */
export function findHeaders(
  rows: readonly (readonly string[])[],
  fits: (cells: readonly string[]) => boolean,
): number {
  const fitting = rows.findIndex(fits);
  if (fitting >= 0) return fitting;
  const filled = rows.map((cells) => cells.filter((cell) => cell.trim() !== '').length);
  return Math.max(0, filled.indexOf(Math.max(...filled)));
}
