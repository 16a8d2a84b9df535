import { withdrawQuote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changeRevision, findRevision, lockRevision, nextState, requireVersion } from './quote-records.ts';
import { dayOf } from './quote-rows.ts';

export const answerWithdrawQuote = handle(withdrawQuote, ({ params: { id }, expectedVersion, services }) =>
  services.database.$transaction(async (transaction) => {
    const today = dayOf(services.clock());
    const row = await lockRevision(transaction, id);
    requireVersion(row, expectedVersion());
    await changeRevision(transaction, row, { state: nextState(row, 'withdraw', today) });
    return findRevision(transaction, id, today);
  }),
);
