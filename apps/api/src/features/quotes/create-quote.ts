import { createQuote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { findQuote } from './quote-records.ts';
import { dayOf } from './quote-rows.ts';
import { addQuote } from './write-draft.ts';

export const answerCreateQuote = handle(createQuote, ({ body, actor, services }) =>
  services.database.$transaction(async (transaction) => {
    const id = await addQuote(transaction, body, { createdBy: actorKey(actor) });
    return findQuote(transaction, id, dayOf(services.clock()));
  }),
);
