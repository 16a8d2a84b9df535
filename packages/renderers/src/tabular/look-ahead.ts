/** The first items of a source, with a source that still gives all of them. */
export async function lookAhead<Item>(
  source: AsyncIterable<Item>,
  count: number,
): Promise<{ first: readonly Item[]; all: AsyncIterable<Item> }> {
  const iterator = source[Symbol.asyncIterator]();
  const first: Item[] = [];
  while (first.length < count) {
    const next = await iterator.next();
    if (next.done) break;
    first.push(next.value);
  }
  async function* all(): AsyncGenerator<Item> {
    try {
      yield* first;
      for (let next = await iterator.next(); !next.done; next = await iterator.next()) yield next.value;
    } finally {
      await iterator.return?.();
    }
  }
  return { first, all: all() };
}
