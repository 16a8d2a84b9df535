import { toWorkedCostSheet, workOutCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { findCostSheet } from './cost-sheet-records.ts';
import { gatherInput } from './gather-input.ts';

export const answerWorkOutCostSheet = handle(workOutCostSheet, async ({ params, query, services }) => {
  const { database, clock } = services;
  const sheet = await findCostSheet(database, params.id);
  if (sheet === null) throw notFound('cost sheet');
  const input = await gatherInput(database, sheet, clock().toISOString().slice(0, 10));
  return toWorkedCostSheet(costSheet(input), { withDerivations: query.working });
});
