import { editQuoteDraft } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findRevision } from './quote-records.ts';
import { dayOf } from './quote-rows.ts';
import { changeDraft } from './write-draft.ts';

export const answerEditQuoteDraft = handle(
  editQuoteDraft,
  ({ params: { id }, body, expectedVersion, services }) =>
    services.database.$transaction(async (transaction) => {
      const today = dayOf(services.clock());
      await changeDraft(transaction, { id, version: expectedVersion(), today }, body);
      return findRevision(transaction, id, today);
    }),
);
