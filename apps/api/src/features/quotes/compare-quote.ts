import { acceptanceSchema, compareQuote, workedQuoteSchema } from '@scantling/contracts';
import { QuoteStateError } from '@scantling/quoting';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { compareWithToday } from './compare-with-today.ts';
import { readFrozenWorking } from './frozen-working.ts';
import { dayOf } from './quote-rows.ts';

export const answerCompareQuote = handle(compareQuote, async ({ params, query, services }) => {
  const { database, clock } = services;
  const row = await database.quoteRevision.findUnique({ where: { id: params.id } });
  if (row === null) throw notFound('revision of a quote');
  if (row.working === null) throw new QuoteStateError('draft', 'compare');
  const frozen = readFrozenWorking(row.working);
  const isAccepted = row.acceptance !== null && row.acceptedWorking !== null;
  const sent = {
    document: row.document,
    frozen,
    kept: isAccepted ? workedQuoteSchema.parse(row.acceptedWorking) : frozen.quote,
    chosen: isAccepted ? acceptanceSchema.parse(row.acceptance).chosen : [],
    today: dayOf(clock()),
  };
  return compareWithToday(database, sent, { withDerivations: query.working });
});
