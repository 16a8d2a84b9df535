import { quoteDraftSchema, toWorkedCostSheet, workOutQuoteLine } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { costLines } from './cost-lines.ts';
import { readFrozenWorking, withWorking } from './frozen-working.ts';
import { dayOf } from './quote-rows.ts';

export const answerWorkOutQuoteLine = handle(workOutQuoteLine, async ({ params, query, services }) => {
  const { database, clock } = services;
  const row = await database.quoteRevision.findUnique({ where: { id: params.id } });
  if (row === null) throw notFound('revision of a quote');
  if (row.working !== null) {
    const kept = readFrozenWorking(row.working).sheets[params.lineId];
    if (kept === undefined) throw notFound('line with a cost sheet');
    return withWorking(kept.worked, query.working);
  }
  const lines = quoteDraftSchema.parse(row.draft).lines.filter(({ id }) => id === params.lineId);
  const [costed] = await costLines(database, lines, dayOf(clock()));
  if (costed === undefined) throw notFound('line with a cost sheet');
  return toWorkedCostSheet(costed.sheet, { withDerivations: query.working });
});
