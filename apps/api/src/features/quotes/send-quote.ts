import { sendQuote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { findRevision } from './quote-records.ts';
import { dayOf } from './quote-rows.ts';
import { sendRevision } from './send-revision.ts';

// Costing and setting the paper take longer than a statement.
const LONGEST_MS = 60_000;

export const answerSendQuote = handle(sendQuote, ({ params: { id }, actor, expectedVersion, services }) =>
  services.database.$transaction(
    async (transaction) => {
      const now = services.clock();
      const wanted = { id, version: expectedVersion(), sentBy: actorKey(actor), now };
      const sending = await sendRevision(transaction, services, wanted);
      return { ...(await findRevision(transaction, id, dayOf(now))), ...sending };
    },
    { timeout: LONGEST_MS, maxWait: LONGEST_MS },
  ),
);
