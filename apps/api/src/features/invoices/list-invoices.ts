import { listInvoices } from '@scantling/contracts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { toDate } from './billing-records.ts';
import { INVOICE_SUMMARY, toInvoiceSummary } from './invoice-rows.ts';

type State = 'open' | 'part-paid' | 'paid' | 'overdue' | 'credited';

/** The same states as `invoiceStateOn`, as the database finds them. */
function inState(
  state: State | undefined,
  today: string,
  total: Prisma.DecimalFilter<'Invoice'>['gte'],
): Prisma.InvoiceWhereInput {
  if (state === undefined) return {};
  const isCredited: Prisma.InvoiceWhereInput = { total: { gt: 0 }, credited: { gte: total ?? 0 } };
  const ofInvoices = { kind: { not: 'credit-note' } };
  if (state === 'credited') return { AND: [ofInvoices, isCredited] };
  const others = { AND: [ofInvoices], NOT: isCredited };
  if (state === 'paid') return { ...others, owed: { lte: 0 } };
  const dueOn = state === 'overdue' ? { lt: toDate(today) } : { gte: toDate(today) };
  const open = { ...others, owed: { gt: 0 }, dueOn };
  if (state === 'overdue') return open;
  return { ...open, paid: state === 'part-paid' ? { gt: 0 } : { lte: 0 } };
}

export const answerListInvoices = handle(listInvoices, async ({ query, services }) => {
  const { invoice } = services.database;
  const today = dayOf(services.clock());
  const [id] = readCursor(query.cursor, 1) ?? [];
  const { kind, quoteId, clientId } = query;
  const rows = await invoice.findMany({
    where: {
      AND: [inState(query.state, today, invoice.fields.total)],
      ...(kind === undefined ? {} : { kind }),
      ...(quoteId === undefined ? {} : { quoteId }),
      ...(clientId === undefined ? {} : { quote: { clientId } }),
      // Ids are made in the order of time (UUID 7).
      ...(id === undefined ? {} : { id: { lt: id } }),
    },
    orderBy: { id: 'desc' },
    take: query.limit + 1,
    include: INVOICE_SUMMARY,
  });
  return toPage(
    rows,
    query.limit,
    (row) => [row.id],
    (row) => toInvoiceSummary(row, today),
  );
});
