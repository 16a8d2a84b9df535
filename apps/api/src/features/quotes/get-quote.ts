import { getQuote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findQuote } from './quote-records.ts';
import { dayOf } from './quote-rows.ts';

export const answerGetQuote = handle(getQuote, ({ params, services }) =>
  findQuote(services.database, params.id, dayOf(services.clock())),
);
