import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { undatedKey } from './leaf-key.ts';
import { NoAnswerError } from './operations/operation.ts';
import { Recalculation } from './recalculation/index.ts';
import type { FigureNode, FigureTable } from './table.ts';

/** A table with other values tried at some leaves. */
export interface TriedTable {
  /** The same nodes under the same ids, with the values that follow. */
  readonly table: FigureTable;
  /** The leaves that got another value, as they stood. */
  readonly changed: readonly FigureNode[];
  /** What every figure that moved was before, by id. */
  readonly moved: ReadonlyMap<string, Decimal>;
  /** Keys asked for that no leaf of the table has any more. */
  readonly gone: readonly string[];
}

const prepared = new WeakMap<FigureTable, Recalculation>();

/** A table is read once, however many values are tried on it. */
function preparedOf(table: FigureTable): Recalculation {
  const known = prepared.get(table);
  if (known) return known;
  const made = new Recalculation(table);
  prepared.set(table, made);
  return made;
}

/** Ids of leaves by key without the day they are of. */
function leafIds(table: FigureTable): Map<string, string> {
  return new Map(
    Object.values(table).flatMap(({ id, source }) => (source === undefined ? [] : [[undatedKey(id), id]])),
  );
}

function triedNode(node: FigureNode, value: Decimal, isChanged: boolean): FigureNode {
  const next = { ...node, value: value.toString() };
  if (!isChanged || node.source === undefined) return next;
  const { text, record } = node.source;
  const source = { kind: 'what-if' as const, text: `tried, instead of ${node.value} (${text})` };
  return { ...next, source: record === undefined ? source : { ...source, record } };
}

/**
 * What a whole table comes to when some of its leaves had other values; nothing that was chosen on the way (which price,
 * which stock) is chosen anew.
 * @param changes values by the key of the leaf; one that no leaf has is answered as gone
 * @throws NoAnswerError where the values leave no answer
 */
export function tryValues(table: FigureTable, changes: Readonly<Record<string, DecimalLike>>): TriedTable {
  const ids = leafIds(table);
  const gone: string[] = [];
  const known: Record<string, Decimal> = Object.create(null);
  for (const [key, value] of Object.entries(changes)) {
    const id = ids.get(undatedKey(key));
    if (id === undefined) gone.push(key);
    else known[id] = decimal(value);
  }
  const changed = Object.keys(known).flatMap((id) => table[id] ?? []);
  if (changed.length === 0) return { table, changed, moved: new Map(), gone };
  const { changed: values, faults } = preparedOf(table).change(known);
  const [fault] = faults;
  if (fault !== undefined) throw new NoAnswerError(fault.reason);
  // Without a prototype no key of a leaf can mean one of its members.
  const tried: Record<string, FigureNode> = Object.assign(Object.create(null), table);
  const moved = new Map<string, Decimal>();
  for (const [id, value] of [...Object.entries(known), ...values]) {
    const node = table[id];
    if (node === undefined) continue;
    if (values.has(id)) moved.set(id, decimal(node.value));
    tried[id] = triedNode(node, value, known[id] !== undefined);
  }
  return { table: tried, changed, moved, gone };
}
