import type { QuoteToday } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import type { FigureTable } from '@scantling/figures';

export type LeafChange = QuoteToday['lines'][number]['changes'][number];

/** How much of itself a leaf has moved by; what came or went moved wholly. */
function share({ old, now }: LeafChange) {
  if (old === null || now === null) return decimal(1);
  const before = decimal(old.value);
  const moved = decimal(now.value).minus(before).abs();
  return before.isZero() ? decimal(1) : moved.div(before.abs());
}

/** Every leaf that moved once, whatever lines it stands in, the largest move first. */
export function movedLeaves(today: Pick<QuoteToday, 'lines'>): readonly LeafChange[] {
  const byKey = new Map(today.lines.flatMap(({ changes }) => changes).map((change) => [change.key, change]));
  return [...byKey.values()].sort((left, right) => share(right).comparedTo(share(left)));
}

/** The leaves as figures, so that each shows where it came from. */
export function leafTables(changes: readonly LeafChange[]): { before: FigureTable; after: FigureTable } {
  const tableOf = (side: 'old' | 'now'): FigureTable =>
    Object.fromEntries(
      changes.flatMap((change) => {
        const node = change[side];
        return node === null ? [] : [[change.key, { ...node, id: change.key }] as const];
      }),
    );
  return { before: tableOf('old'), after: tableOf('now') };
}
