import { decimal } from '@scantling/decimals';
import { at } from '../operations/operation.ts';
import type { FigureNode, FigureTable } from '../table.ts';

/** How one figure goes on from another: the figure before it, and what is done to it. */
export interface ReadingStep {
  readonly from: FigureNode;
  /** The other figures that are named. */
  readonly named: readonly FigureNode[];
  /** What follows the value before (" / yield 0.72"), from the other figures in words. */
  readonly words: (others: readonly string[]) => string;
}

/** Sums of more terms are read as a list of their greatest terms, not as a running calculation. */
const TERMS_IN_A_RUN = 3;

export function isNothing({ value }: FigureNode): boolean {
  return decimal(value).isZero();
}

/** The inputs of a figure; none where some were not sent. */
export function sentInputs(table: FigureTable, { how }: FigureNode): readonly FigureNode[] {
  const ids = how?.inputs ?? [];
  const inputs = ids.flatMap((id) => table[id] ?? []);
  return inputs.length < ids.length ? [] : inputs;
}

/** The place of the input a product is read from: what there is of it, before factors and rates. */
function carriedBy(inputs: readonly FigureNode[]): number {
  const ranks = inputs.map(
    ({ unit, how }) => (unit === 'ratio' ? 4 : unit.includes('/') ? 2 : 0) + (how === undefined ? 1 : 0),
  );
  return ranks.indexOf(Math.min(...ranks));
}

/** The term a sum is read from: the only one there is, or the only one with a working. */
function addedTo(terms: readonly FigureNode[]): number | null {
  if (terms.filter((term) => !isNothing(term)).length === 1)
    return terms.findIndex((term) => !isNothing(term));
  const derived = terms.flatMap(({ how }, place) => (how === undefined ? [] : [place]));
  return terms.length > TERMS_IN_A_RUN || derived.length > 1 ? null : (derived[0] ?? 0);
}

const AFTER_THE_FIRST: Readonly<Record<string, (others: readonly string[]) => string>> = {
  same: () => '',
  quotient: ([divisor]) => ` / ${divisor}`,
  difference: ([less]) => ` − ${less}`,
  'round-up': ([multiple]) => `, up to a multiple of ${multiple}`,
  'round-down': ([multiple]) => `, down to a multiple of ${multiple}`,
  greatest: (others) => `, but at least ${others.join(' and ')}`,
  least: (others) => `, but at most ${others.join(' and ')}`,
};

/**
 * What a figure goes on from, where it can be read as the next step of a running calculation: only the first input of
 * what cannot be turned round (a quotient, a difference), any of a product. Null for leaves and for all else.
 */
export function readingStep(table: FigureTable, node: FigureNode): ReadingStep | null {
  const inputs = sentInputs(table, node);
  if (node.how === undefined || inputs.length === 0) return null;
  const { operation, settings } = node.how;
  const step = (place: number, words: ReadingStep['words']): ReadingStep => ({
    from: at(inputs, place),
    named: inputs.filter((_, index) => index !== place),
    words,
  });
  if (operation === 'product')
    return step(carriedBy(inputs), (others) => others.map((other) => ` × ${other}`).join(''));
  if (operation === 'sum') {
    const place = addedTo(inputs);
    return place === null ? null : step(place, (others) => others.map((other) => ` + ${other}`).join(''));
  }
  if (operation === 'round') return step(0, () => `, rounded to ${settings?.places} decimal places`);
  if (operation === 'choose') {
    const isReached = decimal(at(inputs, 0).value).gte(decimal(at(inputs, 1).value));
    return step(isReached ? 2 : 3, () => '');
  }
  const words = AFTER_THE_FIRST[operation];
  return words === undefined ? null : step(0, words);
}
