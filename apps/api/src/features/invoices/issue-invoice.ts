import { issueInvoice } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { findInvoice } from './invoice-rows.ts';
import { PAPER_TIME } from './paper-time.ts';
import { writeInvoice } from './write-invoice.ts';

export const answerIssueInvoice = handle(issueInvoice, ({ params, body, actor, services }) =>
  services.database.$transaction(async (transaction) => {
    const now = services.clock();
    const issuing = { quoteId: params.id, ...body, issuedBy: actorKey(actor), now };
    const id = await writeInvoice(transaction, services, issuing);
    return findInvoice(transaction, id, dayOf(now));
  }, PAPER_TIME),
);
