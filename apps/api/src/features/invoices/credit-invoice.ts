import { creditInvoice } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { findInvoice } from './invoice-rows.ts';
import { PAPER_TIME } from './paper-time.ts';
import { writeCredit } from './write-invoice.ts';

export const answerCreditInvoice = handle(creditInvoice, ({ params, body, actor, services }) =>
  services.database.$transaction(async (transaction) => {
    const now = services.clock();
    const issuing = { invoiceId: params.id, ...body, issuedBy: actorKey(actor), now };
    const id = await writeCredit(transaction, services, issuing);
    return findInvoice(transaction, id, dayOf(now));
  }, PAPER_TIME),
);
