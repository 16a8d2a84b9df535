import { declineQuote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { declineRevision } from './answer-revision.ts';
import { findRevision, lockRevision, requireVersion } from './quote-records.ts';
import { dayOf } from './quote-rows.ts';

export const answerDeclineQuote = handle(
  declineQuote,
  ({ params: { id }, body, actor, expectedVersion, services }) =>
    services.database.$transaction(async (transaction) => {
      const at = services.clock();
      const row = await lockRevision(transaction, id);
      requireVersion(row, expectedVersion());
      const by = { kind: 'workshop', actor: actorKey(actor) } as const;
      await declineRevision(transaction, row, { ...body, at, by }, dayOf(at));
      return findRevision(transaction, id, dayOf(at));
    }),
);
