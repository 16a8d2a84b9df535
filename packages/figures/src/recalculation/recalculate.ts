import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import type { FigureTable } from '../table.ts';
import { prepareTable } from './prepare-table.ts';
import { workOutFigure } from './work-out-figure.ts';

/**
 * Works the whole table out again from its leaves, with some leaves changed: the proof that every value on a screen
 * follows from the leaves shown. For change after change, Recalculation works out only what moves.
 * @returns the value of every figure by id
 * @throws UnknownFigureError, FigureTableError, NoAnswerError, which names the figure
 */
export function recalculate(
  table: FigureTable,
  changes: Readonly<Record<string, DecimalLike>> = {},
): Map<string, Decimal> {
  const prepared = prepareTable(table);
  const changed = new Map(
    Object.entries(changes).map(([id, value]) => [prepared.leafPlace(id), decimal(value)]),
  );
  const values: Decimal[] = [];
  prepared.figures.forEach((figure, place) => {
    const inputs = figure.inputs.flatMap((input) => values[input] ?? []);
    values.push(changed.get(place) ?? figure.given ?? workOutFigure(figure, inputs));
  });
  return new Map(prepared.figures.flatMap(({ node }, place) => pair(node.id, values[place])));
}

function pair(id: string, value: Decimal | undefined): [string, Decimal][] {
  return value === undefined ? [] : [[id, value]];
}
