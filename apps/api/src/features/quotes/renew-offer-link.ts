import { renewOfferLink } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { hashOf, newSecret } from '../../sign-in/secret-text.ts';
import { offerPath } from './offer-mail.ts';
import { changeRevision, lockRevision, nextState } from './quote-records.ts';
import { dayOf } from './quote-rows.ts';

export const answerRenewOfferLink = handle(renewOfferLink, ({ params: { id }, services }) =>
  services.database.$transaction(async (transaction) => {
    const row = await lockRevision(transaction, id);
    nextState(row, 'renew-link', dayOf(services.clock()));
    const token = newSecret(services.random);
    await changeRevision(transaction, row, { tokenHash: hashOf(token) });
    return { linkPath: offerPath(token) };
  }),
);
