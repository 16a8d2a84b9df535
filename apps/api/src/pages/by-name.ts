/** What comes after the last record seen, in a list by name and id; everything on the first page. */
export function afterName(after: readonly string[] | undefined) {
  if (after === undefined) return {};
  const [name = '', id = ''] = after;
  return { OR: [{ name: { gt: name } }, { name, id: { gt: id } }] };
}
