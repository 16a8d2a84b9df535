import type { GridRow } from '../../../components/edit-grid/edit-column.ts';

const slugOf = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 36);

/** The id, or with the first number behind it that makes it one nobody has. */
export function freeId(wanted: string, taken: ReadonlySet<string>, before = '-'): string {
  let id = wanted;
  for (let count = 2; taken.has(id); count += 1) id = `${wanted}${before}${count}`;
  return id;
}

/** Gives every named row without an id one made of its name, and one of its own to each copy. */
export function withIds(rows: readonly GridRow[]): readonly GridRow[] {
  const taken = new Set(rows.map(({ cells }) => cells.id ?? '').filter(Boolean));
  return rows.map((row) => {
    const slug = slugOf(row.cells.name ?? '');
    if ((row.cells.id ?? '') !== '' || slug === '') return row;
    const id = freeId(slug, taken);
    taken.add(id);
    return { ...row, cells: { ...row.cells, id } };
  });
}
