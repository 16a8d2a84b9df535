import type { CostDifferenceAnswer } from '@scantling/contracts';
import type { FigureNode, FigureTable } from '@scantling/figures';

export type CostChange = CostDifferenceAnswer['causes'][number]['changes'][number];

/** The names under which the leaves of both sides stand in a sheet's merged table. */
export const LEAVES_WAS = 'leaf-was';
export const LEAVES_NOW = 'leaf-now';

/** The leaves of both sides as figures, so that each opens where it came from; to be merged with the answer's own. */
export function differenceTables(
  difference: CostDifferenceAnswer | undefined,
): Readonly<Record<string, FigureTable>> {
  const changes = difference?.causes.flatMap((cause) => cause.changes) ?? [];
  const tableOf = (pick: (change: CostChange) => FigureNode | null): FigureTable =>
    Object.fromEntries(
      changes.flatMap((change) => {
        const node = pick(change);
        return node === null ? [] : [[change.key, { ...node, id: change.key }] as const];
      }),
    );
  return { [LEAVES_WAS]: tableOf(({ was }) => was), [LEAVES_NOW]: tableOf(({ now }) => now) };
}
