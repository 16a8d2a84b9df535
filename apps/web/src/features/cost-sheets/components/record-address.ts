const POOLS = ['workshop', 'administration'];

/**
 * The screen of the record a source names ("tool:planer"), where there is one. `known` holds the records named by
 * code; yearly amounts are named by id, and the pools themselves are settings of the workshop.
 */
export function recordAddress(record: string, known: ReadonlyMap<string, string>): string | undefined {
  const [kind, id] = record.split(':');
  if (kind !== 'overhead' || id === undefined) return known.get(record);
  return POOLS.includes(id) ? '/workshop' : `/overhead/${id}`;
}
