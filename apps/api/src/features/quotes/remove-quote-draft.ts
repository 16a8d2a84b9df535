import { removeQuoteDraft } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dayOf } from './quote-rows.ts';
import { dropDraft } from './write-draft.ts';

export const answerRemoveQuoteDraft = handle(
  removeQuoteDraft,
  async ({ params: { id }, expectedVersion, services }) => {
    const today = dayOf(services.clock());
    await services.database.$transaction((transaction) =>
      dropDraft(transaction, { id, version: expectedVersion(), today }),
    );
    return undefined;
  },
);
