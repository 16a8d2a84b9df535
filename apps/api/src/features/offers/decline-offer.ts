import { declineOffer } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { declineRevision } from '../quotes/answer-revision.ts';
import { lockRevision } from '../quotes/quote-records.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { findOffer, findOfferId, requireOpen } from './offer-records.ts';

export const answerDeclineOffer = handle(declineOffer, async ({ params, body, request, services }) => {
  const id = await findOfferId(services, params.token, request.ip);
  return services.database.$transaction(async (transaction) => {
    const at = services.clock();
    const today = dayOf(at);
    const row = await lockRevision(transaction, id);
    await requireOpen(transaction, row, today);
    await declineRevision(transaction, row, { ...body, at, by: { kind: 'link' } }, today);
    return findOffer(transaction, id, today);
  });
});
