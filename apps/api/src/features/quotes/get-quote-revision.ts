import { getQuoteRevision } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findRevision } from './quote-records.ts';
import { dayOf } from './quote-rows.ts';

export const answerGetQuoteRevision = handle(getQuoteRevision, ({ params, services }) =>
  findRevision(services.database, params.id, dayOf(services.clock())),
);
