import { decimal } from '@scantling/decimals';
import { type FigureNode, type FigureTable, findThreePoints, prepareTable } from '@scantling/figures';
import type { SheetSolution } from '../api/solve-cost-sheet.ts';
import { inputWords, type SolveVoice } from './solve-words.ts';

export interface SheetEstimate {
  readonly low: FigureNode;
  readonly likely: FigureNode;
  readonly high: FigureNode;
}

/** The three-point estimates of a table: least, likely and greatest of each. */
export function estimatesIn(table: FigureTable): SheetEstimate[] {
  const prepared = prepareTable(table);
  return findThreePoints(prepared).flatMap((three) => {
    const [low, likely, high] = [three.low, three.likely, three.high].map(
      (place) => prepared.figures[place]?.node,
    );
    return low && likely && high ? [{ low, likely, high }] : [];
  });
}

/** What to know where the input is one of three points and the value found breaks their order; null where it does not. */
export function estimateWords(
  table: FigureTable,
  voice: SolveVoice,
  { crossings, figures }: SheetSolution,
): string | null {
  const of = estimatesIn(table).find(({ low, likely, high }) =>
    [low, likely, high].some(({ id }) => id === voice.leaf.id),
  );
  if (of === undefined) return null;
  const breaksOrder = crossings.some(({ at }) => {
    const found = decimal(figures[at.value]?.value ?? '0');
    const [low, likely, high] = [of.low, of.likely, of.high].map(({ id, value }) =>
      id === voice.leaf.id ? found : decimal(value),
    );
    return (
      low === undefined || likely === undefined || high === undefined || low.gt(likely) || likely.gt(high)
    );
  });
  if (!breaksOrder) return null;
  return `It is one of three points of an estimate: ${inputWords(voice, of.low.value)}, likely ${inputWords(voice, of.likely.value)}, ${inputWords(voice, of.high.value)}. The value found lies beyond another of them, so that one has to be changed with it.`;
}
