import { type Decimal, decimal, roundHalfAway } from '@scantling/decimals';
import { GraphValues } from './graph-values.ts';
import type { FigureTable } from './table.ts';

/** A figure of one side of a step: what it adds to, and by what; absent where that side has no such line. */
export interface LinePart {
  readonly line: string;
  readonly into: string;
}

/** A leaf that both sides have, by its id on each; or a line of a sum that may stand in one side alone. */
export type DifferenceStep =
  | { readonly kind: 'leaf'; readonly was: string; readonly now: string }
  | {
      readonly kind: 'line';
      readonly parts: readonly { readonly was?: LinePart; readonly now?: LinePart }[];
    };

/** One side: its table with derivations, and the figures whose difference is explained, in the same order on both. */
export interface DifferenceSide {
  readonly figures: FigureTable;
  readonly totals: readonly string[];
}

/** What the steps move each total by. */
export interface AttributedDifference {
  readonly was: readonly Decimal[];
  readonly now: readonly Decimal[];
  /** By step, then by total. */
  readonly effects: readonly (readonly Decimal[])[];
  /** What no step accounts for: the two are worked out in another way. */
  readonly rest: readonly Decimal[];
}

// Far below any minor unit, and few enough digits that every sum of them is exact in 34.
const PLACES = 12;
const HALF = decimal('0.5');

type Way = 'was' | 'now';

/** The totals of one side before any step and after each, as the other side's values are put into it in order. */
function walk(
  own: DifferenceSide,
  other: DifferenceSide,
  way: Way,
  steps: readonly DifferenceStep[],
): Decimal[][] {
  const parts = steps.flatMap((step) => (step.kind === 'line' ? step.parts : []));
  const lines = parts.flatMap((part) => {
    const mine = part[way];
    return mine === undefined ? [] : [mine.line, mine.into];
  });
  const graph = new GraphValues(own.figures, [...own.totals, ...lines]);
  const theirs: Way = way === 'was' ? 'now' : 'was';
  const read = (figures: FigureTable, id: string): Decimal => decimal(figures[id]?.value ?? '0');
  const totals = (): Decimal[] => own.totals.map((id) => roundHalfAway(graph.value(id), PLACES));
  const states = [totals()];
  for (const step of steps) {
    if (step.kind === 'leaf') {
      if (graph.has(step[way])) graph.set(step[way], read(other.figures, step[theirs]));
    } else {
      for (const part of step.parts) {
        const into = part[way]?.into ?? part[theirs]?.into;
        if (into === undefined || !graph.has(into)) continue;
        const mine = part[way] === undefined ? decimal(0) : graph.value(part[way].line);
        const wanted = part[theirs] === undefined ? decimal(0) : read(other.figures, part[theirs].line);
        graph.add(into, wanted.minus(mine));
      }
    }
    states.push(totals());
  }
  return states;
}

/**
 * What each step moves the totals by, on the way from one side to the other. The steps are gone through twice: there, in
 * their order, in the working of the first side, with what is worked out in another way last; and back, in the opposite
 * order, in the working of the second side. A step's effect is the mean of both, so that an effect shared by two steps
 * falls half to each, everything adds up to the difference exactly, and comparing the other way round flips every sign.
 * For two factors this is the Shapley value (Shapley 1953, from memory).
 * @throws UnknownFigureError where a total or a line is in no table
 */
export function attributeDifference(
  was: DifferenceSide,
  now: DifferenceSide,
  steps: readonly DifferenceStep[],
): AttributedDifference {
  const there = walk(was, now, 'was', steps);
  const back = walk(now, was, 'now', steps);
  const at = (states: readonly Decimal[][], state: number, total: number): Decimal =>
    states[state]?.[total] ?? decimal(0);
  const mean = (one: Decimal, other: Decimal): Decimal => one.plus(other).times(HALF);
  const all = was.totals.map((_, total) => total);
  const last = steps.length;
  return {
    was: all.map((total) => at(there, 0, total)),
    now: all.map((total) => at(back, 0, total)),
    effects: steps.map((_, step) =>
      all.map((total) =>
        mean(
          at(there, step + 1, total).minus(at(there, step, total)),
          at(back, step, total).minus(at(back, step + 1, total)),
        ),
      ),
    ),
    rest: all.map((total) =>
      mean(
        at(back, 0, total).minus(at(there, last, total)),
        at(back, last, total).minus(at(there, 0, total)),
      ),
    ),
  };
}
