import {
  type AnswerOf,
  compareCostSheets,
  comparedColumn,
  toCostDifference,
  toWorkedCostSheet,
} from '@scantling/contracts';
import { costDifference, costSheet } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import type { Prisma } from '../../generated/prisma/client.ts';
import { handle } from '../../handle.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { type CostSheetAnswer, findCostSheet } from './cost-sheet-records.ts';
import { gatherInput } from './gather-input.ts';

type Side = AnswerOf<typeof compareCostSheets>['was'];

/** A sheet worked out at one number of pieces, with what a comparison says of it. */
async function workSide(
  database: Prisma.TransactionClient,
  sheet: CostSheetAnswer,
  { pieces, today }: { pieces: number; today: string },
) {
  const input = await gatherInput(database, { ...sheet, quantities: [pieces] }, today);
  const worked = toWorkedCostSheet(costSheet(input), { withDerivations: true });
  const { id: costSheetId, title, designId, designName, newestRevision } = sheet;
  const side: Side = {
    costSheetId,
    title,
    designId,
    designName,
    revision: sheet.revision ?? newestRevision,
    variant: input.variants?.find(({ id }) => id === sheet.variant)?.name ?? null,
    onDate: worked.onDate,
    basis: worked.basis,
    isComplete: worked.isComplete,
  };
  return { side, column: comparedColumn(worked) };
}

export const answerCompareCostSheets = handle(compareCostSheets, async ({ params, query, services }) => {
  const { database, clock } = services;
  const today = clock().toISOString().slice(0, 10);
  const { with: otherId = params.id, asDrawn, working, pieces: wanted, ...choice } = query;
  const sheet = await findCostSheet(database, params.id);
  if (sheet === null) throw notFound('cost sheet');
  const found = otherId === params.id ? sheet : await findCostSheet(database, otherId);
  if (found === null)
    throw fieldProblem('query.with', 'names no cost sheet', 'Choose one of the cost sheets.');
  // A variant is chosen with its own values, as on the sheet itself.
  const isOtherForm = asDrawn !== undefined || choice.variant !== undefined;
  const drawn = isOtherForm ? { variant: null, parameterValues: {} } : {};
  const other = { ...found, ...drawn, ...choice };
  const pieces = wanted ?? sheet.quantities[0] ?? 1;
  const was = await workSide(database, sheet, { pieces, today });
  const now = await workSide(database, other, { pieces, today });
  const table = new FigureTableBuilder({ withDerivations: working });
  const difference = toCostDifference(costDifference(was.column, now.column), table);
  return { pieces, was: was.side, now: now.side, difference, figures: table.table() };
});
