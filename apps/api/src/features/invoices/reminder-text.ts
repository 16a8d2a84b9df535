import { invoiceDocumentSchema } from '@scantling/contracts';
import { formatMoney } from '@scantling/money';
import { daysOverdue } from '@scantling/quoting';
import { dayOfColumn } from './billing-records.ts';
import type { InvoiceRow } from './invoice-rows.ts';

/** A reminder as it is proposed: friendly the first time, plainer with every one after. */
export function reminderText(row: InvoiceRow, today: string): { subject: string; text: string } {
  const { currency, workshop, client, title } = invoiceDocumentSchema.parse(row.document);
  // As on the invoice itself.
  const locale = workshop.paperSize === 'letter' ? 'en-US' : 'en-GB';
  const owed = formatMoney(row.owed.toString(), currency, { locale });
  const dueOn = dayOfColumn(row.dueOn);
  const count = row.reminders.length;
  const subject = `${count === 0 ? 'Invoice' : `Reminder ${count + 1}: invoice`} ${row.number} is still open`;
  const text = [
    `${client.name},`,
    '',
    `${owed} of our invoice ${row.number} of ${dayOfColumn(row.issuedOn)} for ${title} are still open. It was due on ${dueOn}, ${daysOverdue(dueOn, today)} days ago.`,
    count === 0
      ? 'Perhaps it escaped your notice; the invoice is attached again. If you have paid meanwhile, please take this as done.'
      : `We have reminded you ${count === 1 ? 'once' : `${count} times`} before. Please pay it now, or tell us what stands in the way.`,
    '',
    ...(workshop.bankLines.length === 0 ? [] : [...workshop.bankLines, `Reference: ${row.number}`, '']),
    workshop.name,
  ].join('\n');
  return { subject, text };
}
