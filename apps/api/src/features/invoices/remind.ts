import { remind } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { queueMail } from '../../outbox/queue-mail.ts';
import { fieldProblem, RequestProblem } from '../../problems/request-problem.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { dayOfColumn, lockQuote, toDate } from './billing-records.ts';
import { findInvoice, findInvoiceRow, invoiceStateOn } from './invoice-rows.ts';
import { reminderText } from './reminder-text.ts';

export const answerRemind = handle(remind, ({ params: { id }, body, actor, services }) =>
  services.database.$transaction(async (transaction) => {
    const today = dayOf(services.clock());
    const { quoteId } = await findInvoiceRow(transaction, id);
    await lockQuote(transaction, quoteId);
    const row = await findInvoiceRow(transaction, id);
    if (row.reminders.some(({ sentOn }) => dayOfColumn(sentOn) === today))
      return findInvoice(transaction, id, today);
    if (invoiceStateOn(row, today) !== 'overdue')
      throw new RequestProblem('quote-state', {
        detail: 'This invoice is not overdue: there is nothing to remind of.',
      });
    const { name, email } = row.quote.client;
    if (email === null)
      throw fieldProblem('client.email', 'is not known', 'Enter the client’s e-mail address first.');
    const proposed = reminderText(row, today);
    const text = body.text ?? proposed.text;
    await transaction.reminder.create({
      data: { invoiceId: id, sentOn: toDate(today), mailedTo: email, text, createdBy: actorKey(actor) },
    });
    await queueMail(transaction, {
      event: `invoice-reminder:${id}:${today}`,
      to: { name, address: email },
      subject: proposed.subject,
      text,
      attachments: [row.paperId],
      about: { kind: 'invoice', id },
      isDemo: row.isDemo,
    });
    return findInvoice(transaction, id, today);
  }),
);
