import { listOverdue } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { dayOfColumn, toDate } from './billing-records.ts';
import { INVOICE_SUMMARY, toInvoiceSummary } from './invoice-rows.ts';
import { reminderText } from './reminder-text.ts';

export const answerListOverdue = handle(listOverdue, async ({ query, services }) => {
  const today = dayOf(services.clock());
  const [day, id] = readCursor(query.cursor, 2) ?? [];
  const after =
    day === undefined || id === undefined
      ? {}
      : { OR: [{ dueOn: { gt: toDate(day) } }, { dueOn: toDate(day), id: { gt: id } }] };
  const rows = await services.database.invoice.findMany({
    where: { owed: { gt: 0 }, dueOn: { lt: toDate(today) }, AND: [after] },
    orderBy: [{ dueOn: 'asc' }, { id: 'asc' }],
    take: query.limit + 1,
    include: INVOICE_SUMMARY,
  });
  return toPage(
    rows,
    query.limit,
    (row) => [dayOfColumn(row.dueOn), row.id],
    (row) => {
      const last = row.reminders.at(-1);
      return {
        invoice: toInvoiceSummary(row, today),
        mailTo: row.quote.client.email,
        remindersSent: row.reminders.length,
        lastRemindedOn: last === undefined ? null : dayOfColumn(last.sentOn),
        ...reminderText(row, today),
      };
    },
  );
});
