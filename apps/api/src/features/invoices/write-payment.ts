import { invoiceDocumentSchema } from '@scantling/contracts';
import { receiptPaper } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { nextNumber } from '../../numbers/next-number.ts';
import { fieldProblem, notFound, RequestProblem } from '../../problems/request-problem.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { documentWorkshop } from '../quotes/client-facts.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { lockQuote, toDate } from './billing-records.ts';
import { findInvoiceRow, settleInvoice } from './invoice-rows.ts';
import { keepPaper, type PaperMaker } from './keep-invoice.ts';

type Access = Prisma.TransactionClient;

export type PaymentGiven = {
  invoiceId: string;
  amount: string;
  receivedOn: string;
  method: string;
  reference: string;
  withReceipt: boolean;
  createdBy: string;
  now: Date;
};

function requireAmount(amount: string): void {
  if (!/[1-9]/.test(amount)) throw fieldProblem('amount', 'is nothing', 'Enter more than 0.');
}

/** Enters money received on an invoice, with its receipt. @throws RequestProblem not-found or input-invalid */
export async function writePayment(
  transaction: Access,
  maker: PaperMaker,
  given: PaymentGiven,
): Promise<void> {
  const { invoiceId, amount, receivedOn, method, reference, withReceipt, createdBy, now } = given;
  requireAmount(amount);
  if (receivedOn > dayOf(now))
    throw fieldProblem('receivedOn', 'is still to come', 'Name the day the money came in.');
  const { quoteId } = await findInvoiceRow(transaction, invoiceId);
  await lockQuote(transaction, quoteId);
  const row = await findInvoiceRow(transaction, invoiceId);
  if (row.kind === 'credit-note')
    throw fieldProblem('id', 'is a credit note', 'Enter the payment on an invoice.');
  const document = invoiceDocumentSchema.parse(row.document);
  const { currency, client, title } = document;
  let receipt: { receiptNumber: string; receiptId: string } | undefined;
  if (withReceipt) {
    const workshop = documentWorkshop(await readWorkshop(transaction));
    const year = Number(receivedOn.slice(0, 4));
    const { isDemo } = row;
    const { number } = await nextNumber(transaction, { series: 'receipt', year, isDemo });
    const owedAfter = row.owed.minus(amount).toString();
    const invoiceNumber = row.number;
    const says = { receivedOn, workshop, client, invoiceNumber, title, method, reference, currency, amount };
    const paper = receiptPaper({ number, ...says, owedAfter });
    receipt = { receiptNumber: number, receiptId: await keepPaper(transaction, maker, { paper, isDemo }) };
  }
  await transaction.payment.create({
    data: {
      invoiceId,
      amount,
      receivedOn: toDate(receivedOn),
      method,
      reference,
      createdBy,
      ...(receipt ?? {}),
    },
  });
  await settleInvoice(transaction, invoiceId);
}

/** Takes a payment back by an entry below 0. @returns the id of the invoice */
export async function writeReversal(
  transaction: Access,
  { id, reason, createdBy, now }: { id: string; reason: string; createdBy: string; now: Date },
): Promise<string> {
  const found = await transaction.payment.findUnique({ where: { id }, include: { invoice: true } });
  if (found === null) throw notFound('payment');
  await lockQuote(transaction, found.invoice.quoteId);
  const isReversed = (await transaction.payment.count({ where: { reversesId: id } })) > 0;
  if (isReversed || found.reversesId !== null)
    throw new RequestProblem('already-exists', {
      detail: isReversed ? 'This payment was taken back already.' : 'This entry takes a payment back itself.',
    });
  const { invoiceId, amount, method, reference } = found;
  await transaction.payment.create({
    data: {
      invoiceId,
      amount: amount.neg(),
      receivedOn: toDate(dayOf(now)),
      method,
      reference,
      reversesId: id,
      reason,
      createdBy,
    },
  });
  await settleInvoice(transaction, invoiceId);
  return invoiceId;
}
