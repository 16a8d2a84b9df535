import type { Bill } from './bill.ts';

/** What taking a bill over does to one row of the bill there is; rows are the same where kind and id are. */
export interface BillRowChange {
  readonly kind: keyof Bill;
  readonly id: string;
  readonly name: string;
  readonly change: 'new' | 'changed' | 'gone' | 'unchanged';
  /** Names of the values that differ, for a changed row. */
  readonly fields: readonly string[];
}

const KINDS = ['assemblies', 'parts', 'components', 'finishes', 'consumables', 'operations'] as const;

type Row = { readonly id: string; readonly name: string };

function sortedText(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}

function differences(before: Row, after: Row): string[] {
  const old = new Map(Object.entries(before));
  const fresh = new Map(Object.entries(after));
  const names = [...new Set([...old.keys(), ...fresh.keys()])];
  return names.filter((name) => sortedText(old.get(name)) !== sortedText(fresh.get(name)));
}

/** Row by row, what a bill changes of the one before it: its rows in their order, then those that are gone. */
export function compareBills(before: Bill, after: Bill): BillRowChange[] {
  return KINDS.flatMap((kind) => {
    const old = new Map<string, Row>(before[kind].map((row) => [row.id, row]));
    const fresh: readonly Row[] = after[kind];
    const kept = new Set(fresh.map(({ id }) => id));
    const read = fresh.map(({ id, name, ...rest }): BillRowChange => {
      const was = old.get(id);
      if (was === undefined) return { kind, id, name, change: 'new', fields: [] };
      const fields = differences(was, { id, name, ...rest });
      return { kind, id, name, change: fields.length === 0 ? 'unchanged' : 'changed', fields };
    });
    const gone = before[kind]
      .filter(({ id }) => !kept.has(id))
      .map(({ id, name }): BillRowChange => ({ kind, id, name, change: 'gone', fields: [] }));
    return [...read, ...gone];
  });
}
