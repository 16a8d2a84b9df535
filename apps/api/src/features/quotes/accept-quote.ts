import { acceptQuote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { acceptRevision } from './answer-revision.ts';
import { findRevision, lockRevision, requireVersion } from './quote-records.ts';
import { dayOf, type RevisionRow } from './quote-rows.ts';

/** @throws RequestProblem input-invalid for a day before it was sent, or one that has not come */
function requireDay(row: RevisionRow, onDay: string, today: string): void {
  if (onDay > today || (row.sentAt !== null && onDay < dayOf(row.sentAt)))
    throw fieldProblem('onDate', 'is not between the day it was sent and today', 'Give the day it was said.');
}

export const answerAcceptQuote = handle(
  acceptQuote,
  ({ params: { id }, body, actor, expectedVersion, services }) =>
    services.database.$transaction(async (transaction) => {
      const at = services.clock();
      const today = dayOf(at);
      const { how, onDate = today, ...given } = body;
      const row = await lockRevision(transaction, id);
      requireVersion(row, expectedVersion());
      requireDay(row, onDate, today);
      const by = { kind: 'workshop', actor: actorKey(actor), how } as const;
      await acceptRevision(transaction, row, { ...given, by, at, onDay: onDate });
      return findRevision(transaction, id, today);
    }),
);
