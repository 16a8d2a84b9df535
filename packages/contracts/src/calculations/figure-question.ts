import { type FigureNode, type FigureTable, UnknownFigureError } from '@scantling/figures';
import { z } from 'zod';
import { decimalText } from '../decimal-text.ts';
import { figureNodeSchema } from '../figures.ts';

const MOST_FIGURES = 20_000;
const MOST_LEAVES = 2000;

/** The id of a figure in the table that the question brings. */
export const figureKey = z.string().min(1).max(400);

/** A decimal as figures carry it: constants have more places than a person would write. */
const figureValue = z.string().regex(/^-?\d{1,60}(?:\.\d{1,60})?(?:e[+-]?\d{1,2})?$/i, {
  error: 'is not a decimal number of a figure',
});

const givenNodeSchema = figureNodeSchema.extend({ value: figureValue });

const givenTableSchema: z.ZodType<FigureTable, FigureTable> = z.record(figureKey, givenNodeSchema);

/** A table with derivations, as an answer with `working=true` gives it. */
export const givenFiguresSchema = z
  .record(z.string(), z.unknown())
  // Before its figures are looked at, so that a table of millions is refused at once.
  .refine((table) => Object.keys(table).length <= MOST_FIGURES, {
    error: `holds more than ${MOST_FIGURES} figures`,
    params: { mend: 'Send only the figures the result rests on.' },
    abort: true,
  })
  .pipe(givenTableSchema)
  .meta({
    description: `A table of at most ${MOST_FIGURES} figures, as an answer with working=true gives it`,
  });

/** New values of leaves by their ids. */
export const leafChangesSchema = z
  .record(figureKey, decimalText)
  .refine((changes) => Object.keys(changes).length <= MOST_LEAVES, {
    error: `changes more than ${MOST_LEAVES} leaves`,
  });

export const givenRangesSchema = z.record(figureKey, z.strictObject({ low: decimalText, high: decimalText }));

export const figureFaultSchema = z.strictObject({ id: figureKey, label: z.string(), reason: z.string() });

/** A figure of the question's table. @throws UnknownFigureError */
export function nodeOf(table: FigureTable, id: string): FigureNode {
  const found = Object.hasOwn(table, id) ? table[id] : undefined;
  if (found === undefined) throw new UnknownFigureError(id);
  return found;
}

/** The nodes of an answer: figures of the question, and what came of it. */
export class AnswerFigures {
  readonly #nodes: Record<string, FigureNode> = Object.create(null);

  /** A figure of the question as it was, without what it rests on unless that is in the answer too. */
  keep({ how: _, ...node }: FigureNode): string {
    this.#nodes[node.id] = node;
    return node.id;
  }

  add(node: FigureNode): string {
    this.#nodes[node.id] = node;
    return node.id;
  }

  /** A value that the question brought about, in the unit of another figure. */
  found(
    id: string,
    label: string,
    like: FigureNode,
    found: { value: { toString(): string }; text: string },
  ): string {
    const { unit, currency } = like;
    const source = { kind: 'what-if', text: found.text } as const;
    return this.add({ id, label, unit, currency, value: found.value.toString(), source });
  }

  /** The first less the second, both in this answer. */
  less(
    id: string,
    label: string,
    [from, taken]: readonly [string, string],
    value: { toString(): string },
  ): string {
    const { unit, currency } = nodeOf(this.#nodes, from);
    const how = { operation: 'difference', inputs: [from, taken] } as const;
    return this.add({ id, label, unit, currency, value: value.toString(), how });
  }

  table(): FigureTable {
    return this.#nodes;
  }
}
