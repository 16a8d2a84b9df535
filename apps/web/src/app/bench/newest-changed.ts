/** The ones changed last, the newest first; moments are ISO 8601 in UTC, so their text sorts by time. */
export function newestChanged<Row extends { readonly updatedAt: string }>(
  rows: readonly Row[],
  most: number,
): Row[] {
  return [...rows].sort((a, b) => (a.updatedAt < b.updatedAt ? 1 : -1)).slice(0, most);
}
