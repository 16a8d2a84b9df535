import { quoteDraftSchema, toWorkedQuote, workedQuoteSchema, workOutQuote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { CostingRecords } from '../cost-sheets/costing-records.ts';
import { readFrozenWorking, withWorking } from './frozen-working.ts';
import { dayOf } from './quote-rows.ts';
import { unpricedLines } from './unpriced-lines.ts';
import { workDraft } from './work-draft.ts';

export const answerWorkOutQuote = handle(workOutQuote, async ({ params, query, services }) => {
  const { database, clock } = services;
  const row = await database.quoteRevision.findUnique({ where: { id: params.id } });
  if (row === null) throw notFound('revision of a quote');
  if (row.acceptedWorking !== null)
    return withWorking(workedQuoteSchema.parse(row.acceptedWorking), query.working);
  if (row.working !== null) return withWorking(readFrozenWorking(row.working).quote, query.working);
  const draft = quoteDraftSchema.parse(row.draft);
  const { totals, margin, costed } = await workDraft(
    new CostingRecords(database, dayOf(clock())),
    draft,
    query.chosen,
  );
  const about = { isFrozen: false, currency: draft.currency, unpriced: unpricedLines(costed) };
  return toWorkedQuote(totals, margin, about, { withDerivations: query.working });
});
