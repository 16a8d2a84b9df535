import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { OPERATIONS } from './operations/index.ts';
import type { FigureNode, FigureTable } from './table.ts';

/** Thrown when a table points at a figure it does not hold, or a change names one that is no leaf. */
export class UnknownFigureError extends Error {
  readonly code = 'unknown-figure';
  constructor(readonly id: string) {
    super(`there is no such figure: "${id}"`);
    this.name = 'UnknownFigureError';
  }
}

/**
 * Works the whole table out again from its leaves, with some leaves changed: what-if, and the proof that
 * every value on a screen follows from the leaves shown.
 * @returns the value of every figure by id
 * @throws UnknownFigureError, NoAnswerError
 */
export function recalculate(
  table: FigureTable,
  changes: Readonly<Record<string, DecimalLike>> = {},
): Map<string, Decimal> {
  for (const id of Object.keys(changes))
    if (table[id]?.source === undefined) throw new UnknownFigureError(id);
  const values = new Map<string, Decimal>();
  const value = (id: string): Decimal => {
    const known = values.get(id);
    if (known) return known;
    const node: FigureNode | undefined = table[id];
    if (!node) throw new UnknownFigureError(id);
    const changed = changes[id];
    const worked =
      changed !== undefined
        ? decimal(changed)
        : node.how
          ? OPERATIONS[node.how.operation].evaluate(node.how.inputs.map(value), node.how.settings ?? {})
          : decimal(node.value);
    values.set(id, worked);
    return worked;
  };
  for (const id of Object.keys(table)) value(id);
  return values;
}
