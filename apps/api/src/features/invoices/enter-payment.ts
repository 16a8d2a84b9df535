import { enterPayment } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { findInvoice } from './invoice-rows.ts';
import { PAPER_TIME } from './paper-time.ts';
import { writePayment } from './write-payment.ts';

export const answerEnterPayment = handle(enterPayment, ({ params: { id }, body, actor, services }) =>
  services.database.$transaction(async (transaction) => {
    const now = services.clock();
    await writePayment(transaction, services, { invoiceId: id, ...body, createdBy: actorKey(actor), now });
    return findInvoice(transaction, id, dayOf(now));
  }, PAPER_TIME),
);
