import { reviseQuote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { findRevision } from './quote-records.ts';
import { dayOf } from './quote-rows.ts';
import { addRevision } from './write-draft.ts';

export const answerReviseQuote = handle(reviseQuote, ({ params: { id }, actor, services }) =>
  services.database.$transaction(async (transaction) => {
    const today = dayOf(services.clock());
    const made = await addRevision(transaction, { id, today }, { createdBy: actorKey(actor) });
    return findRevision(transaction, made, today);
  }),
);
