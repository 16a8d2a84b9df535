import {
  type InvoiceAnswer,
  invoiceDocumentSchema,
  type invoiceStateSchema,
  type invoiceSummarySchema,
  type paymentSchema,
} from '@scantling/contracts';
import { type Figure, FigureTableBuilder } from '@scantling/figures';
import { type Balance, daysOverdue, type InvoiceAccount, invoiceBalance } from '@scantling/quoting';
import type { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { notFound } from '../../problems/request-problem.ts';
import { dayOfColumn } from './billing-records.ts';
import { readIssuedWorking } from './issued-working.ts';

type Access = Prisma.TransactionClient;

export const INVOICE_SUMMARY = {
  quote: { include: { client: true } },
  creditNotes: { orderBy: { id: 'asc' } },
  payments: { orderBy: { id: 'asc' }, include: { reversal: { select: { id: true } } } },
  reminders: { orderBy: { sentOn: 'asc' } },
} as const satisfies Prisma.InvoiceInclude;
export type InvoiceRow = Prisma.InvoiceGetPayload<{ include: typeof INVOICE_SUMMARY }>;

type State = z.output<typeof invoiceStateSchema>;
type Account = Pick<InvoiceRow, 'kind' | 'total' | 'credited' | 'paid' | 'owed' | 'dueOn'>;

/** The state on a day; null for a credit note. */
export function invoiceStateOn(row: Account, today: string): State | null {
  if (row.kind === 'credit-note') return null;
  if (row.total.gt(0) && row.credited.gte(row.total)) return 'credited';
  if (row.owed.lte(0)) return 'paid';
  if (dayOfColumn(row.dueOn) < today) return 'overdue';
  return row.paid.gt(0) ? 'part-paid' : 'open';
}

export function toInvoiceSummary(row: InvoiceRow, today: string): z.output<typeof invoiceSummarySchema> {
  const { kind, currency, quoteNumber, title } = invoiceDocumentSchema.parse(row.document);
  const state = invoiceStateOn(row, today);
  const dueOn = dayOfColumn(row.dueOn);
  return {
    id: row.id,
    kind,
    number: row.number,
    state,
    quoteId: row.quoteId,
    quoteNumber,
    title,
    clientId: row.quote.clientId,
    clientName: row.quote.client.name,
    issuedOn: dayOfColumn(row.issuedOn),
    dueOn,
    daysOverdue: state === 'overdue' ? daysOverdue(dueOn, today) : 0,
    currency,
    total: row.total.toString(),
    credited: row.credited.toString(),
    paid: row.paid.toString(),
    owed: row.owed.toString(),
    creditsId: row.creditsId,
    paperId: row.paperId,
    isDemo: row.isDemo,
  };
}

function toPayment(row: InvoiceRow['payments'][number]): z.output<typeof paymentSchema> {
  return {
    id: row.id,
    amount: row.amount.toString(),
    receivedOn: dayOfColumn(row.receivedOn),
    method: row.method,
    reference: row.reference,
    reversesId: row.reversesId,
    reversedById: row.reversal?.id ?? null,
    reason: row.reason,
    receiptNumber: row.receiptNumber,
    receiptPaperId: row.receiptId,
    createdAt: row.createdAt.toISOString(),
  };
}

/** An invoice as its balance is worked out; a credit note asks for nothing itself. */
export function toAccount(row: InvoiceRow): InvoiceAccount {
  return {
    id: row.id,
    number: row.number,
    total: row.kind === 'credit-note' ? '0' : row.total.toString(),
    dueOn: dayOfColumn(row.dueOn),
    credits: row.creditNotes.map(({ id, number, total }) => ({ id, number, amount: total.toString() })),
    payments: row.payments.map(({ id, receivedOn, amount, reversesId }) => ({
      id,
      label: `${reversesId === null ? 'paid' : 'taken back'} on ${dayOfColumn(receivedOn)}`,
      amount: amount.toString(),
    })),
  };
}

export function addBalance(table: FigureTableBuilder, under: string, balance: Balance) {
  const add = (name: string, figure: Figure) => table.add(`${under}/${name}`, figure);
  return {
    invoiced: add('invoiced', balance.invoiced),
    credited: add('credited', balance.credited),
    paid: add('paid', balance.paid),
    owed: add('owed', balance.owed),
    overpaid: add('overpaid', balance.overpaid),
  };
}

/** @throws RequestProblem not-found */
export async function findInvoiceRow(database: Access, id: string): Promise<InvoiceRow> {
  const row = await database.invoice.findUnique({ where: { id }, include: INVOICE_SUMMARY });
  if (row === null) throw notFound('invoice');
  return row;
}

/** @throws RequestProblem not-found */
export async function findInvoice(database: Access, id: string, today: string): Promise<InvoiceAnswer> {
  const row = await findInvoiceRow(database, id);
  const document = invoiceDocumentSchema.parse(row.document);
  const table = new FigureTableBuilder({ withDerivations: true });
  const balance = addBalance(table, 'balance', invoiceBalance(toAccount(row), document.currency));
  return {
    ...toInvoiceSummary(row, today),
    document,
    documentHash: row.documentHash,
    payments: row.payments.map(toPayment),
    creditNotes: row.creditNotes.map(({ id: creditId, number, issuedOn, total }) => ({
      id: creditId,
      number,
      issuedOn: dayOfColumn(issuedOn),
      total: total.toString(),
    })),
    reminders: row.reminders.map(({ id: reminderId, sentOn, mailedTo, text }) => ({
      id: reminderId,
      sentOn: dayOfColumn(sentOn),
      mailedTo,
      text,
    })),
    balance,
    figures: table.table(),
    working: readIssuedWorking(row),
  };
}

/** Brings what an invoice keeps of its credits and payments up to date, from those themselves. */
export async function settleInvoice(transaction: Access, id: string): Promise<void> {
  const row = await findInvoiceRow(transaction, id);
  const { currency } = invoiceDocumentSchema.parse(row.document);
  const { credited, paid, owed } = invoiceBalance(toAccount(row), currency);
  await transaction.invoice.update({
    where: { id },
    data: {
      credited: credited.value.toString(),
      paid: paid.value.toString(),
      owed: owed.value.toString(),
    },
  });
}
