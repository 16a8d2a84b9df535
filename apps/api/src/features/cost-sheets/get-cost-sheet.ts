import { getCostSheet } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { findCostSheet } from './cost-sheet-records.ts';

export const answerGetCostSheet = handle(getCostSheet, async ({ params, services }) => {
  const sheet = await findCostSheet(services.database, params.id);
  if (sheet === null) throw notFound('cost sheet');
  return sheet;
});
