import { reversePayment } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { findInvoice } from './invoice-rows.ts';
import { writeReversal } from './write-payment.ts';

export const answerReversePayment = handle(reversePayment, ({ params, body, actor, services }) =>
  services.database.$transaction(async (transaction) => {
    const now = services.clock();
    const reversal = { id: params.id, reason: body.reason, createdBy: actorKey(actor), now };
    return findInvoice(transaction, await writeReversal(transaction, reversal), dayOf(now));
  }),
);
