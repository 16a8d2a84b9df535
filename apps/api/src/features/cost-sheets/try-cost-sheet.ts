import { toWorkedCostSheet, tryCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { findCostSheet } from './cost-sheet-records.ts';
import { gatherInput } from './gather-input.ts';

export const answerTryCostSheet = handle(tryCostSheet, async ({ params, query, body, services }) => {
  const { database, clock } = services;
  const sheet = await findCostSheet(database, params.id);
  if (sheet === null) throw notFound('cost sheet');
  const input = await gatherInput(database, { ...sheet, ...body }, clock().toISOString().slice(0, 10));
  return toWorkedCostSheet(costSheet(input), { withDerivations: query.working });
});
