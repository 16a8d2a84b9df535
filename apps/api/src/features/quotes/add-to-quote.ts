import { addToQuote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { findRevision } from './quote-records.ts';
import { dayOf } from './quote-rows.ts';
import { addAddition } from './write-draft.ts';

export const answerAddToQuote = handle(addToQuote, ({ params, body, actor, services }) =>
  services.database.$transaction(async (transaction) => {
    const today = dayOf(services.clock());
    const by = { createdBy: actorKey(actor) };
    const made = await addAddition(transaction, { quoteId: params.id, today }, body, by);
    return findRevision(transaction, made, today);
  }),
);
