import { type InvoiceWantedGiven, toRowTotals, toTaxedTotals } from '@scantling/contracts';
import { FigureTableBuilder } from '@scantling/figures';
import { type InvoiceDocument, statedRows, type WorkedInvoice, workOutCredit } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { nextNumber } from '../../numbers/next-number.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { documentWorkshop } from '../quotes/client-facts.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { lockQuote, readBilledQuote, toIssuedPaper } from './billing-records.ts';
import { billedClient, draftInvoice } from './invoice-document.ts';
import { findInvoiceRow, settleInvoice } from './invoice-rows.ts';
import { keepInvoice, type PaperMaker } from './keep-invoice.ts';

type Access = Prisma.TransactionClient;

/** The figures of a worked invoice, with their working. */
export function toWorkedInvoice(worked: WorkedInvoice) {
  const table = new FigureTableBuilder({ withDerivations: true });
  return {
    contract: toTaxedTotals('contract', worked.contract, table),
    invoicedBefore: toRowTotals('before', worked.invoicedBefore, table),
    left: toRowTotals('left', worked.left, table),
    own: toTaxedTotals('own', worked.own, table),
    figures: table.table(),
  };
}

export type Issuing = { issuedBy: string; now: Date; sendMail: boolean };

/**
 * Issues an invoice in the caller's transaction: others who bill the quote wait, so that no two can ask for more than
 * was agreed; the number comes last. @returns its id
 */
export async function writeInvoice(
  transaction: Access,
  maker: PaperMaker,
  { quoteId, wanted, issuedBy, now, sendMail }: Issuing & { quoteId: string; wanted: InvoiceWantedGiven },
): Promise<string> {
  await lockQuote(transaction, quoteId);
  const contract = await readBilledQuote(transaction, quoteId);
  const workshop = await readWorkshop(transaction);
  const { document, worked } = draftInvoice(contract, wanted, { workshop, today: dayOf(now) });
  const { isDemo } = contract.quote;
  const { number } = await nextNumber(transaction, { series: 'invoice', year: now.getUTCFullYear(), isDemo });
  const { kind } = wanted;
  const scheduled = kind === 'deposit' ? { revisionId: wanted.revisionId, partId: wanted.partId } : null;
  return keepInvoice(transaction, maker, contract, {
    document: { ...document, number },
    working: toWorkedInvoice(worked),
    scheduled,
    creditsId: null,
    issuedBy,
    sendMail,
  });
}

/** Issues a credit note on an invoice, which stays as it is. @returns its id */
export async function writeCredit(
  transaction: Access,
  maker: PaperMaker,
  given: Issuing & { invoiceId: string; amount: string | null; reason: string },
): Promise<string> {
  const { invoiceId, amount, reason, issuedBy, now, sendMail } = given;
  const { quoteId } = await findInvoiceRow(transaction, invoiceId);
  await lockQuote(transaction, quoteId);
  const row = await findInvoiceRow(transaction, invoiceId);
  const contract = await readBilledQuote(transaction, quoteId);
  const { quote, currency, before } = contract;
  const invoice = toIssuedPaper(row);
  const credits = before.filter(({ creditsId }) => creditsId === invoiceId);
  const worked = workOutCredit({ currency, invoice, credits, amount });
  const workshop = await readWorkshop(transaction);
  const today = dayOf(now);
  const year = now.getUTCFullYear();
  const { number } = await nextNumber(transaction, { series: 'credit-note', year, isDemo: quote.isDemo });
  const document: InvoiceDocument = {
    kind: 'credit-note',
    number,
    issuedOn: today,
    suppliedOn: null,
    dueOn: today,
    workshop: documentWorkshop(workshop),
    client: billedClient(quote),
    orderNumber: '',
    quoteNumber: quote.number ?? '',
    title: quote.title,
    what: `Credit on invoice ${invoice.number}`,
    note: reason,
    currency,
    groups: [],
    contract: null,
    deducted: [],
    taxes: statedRows(worked.own.rows),
    net: worked.own.net.value.toString(),
    tax: worked.own.tax.value.toString(),
    total: worked.own.total.value.toString(),
    credits: { number: invoice.number, issuedOn: invoice.issuedOn },
  };
  const table = new FigureTableBuilder({ withDerivations: true });
  const working = {
    invoiced: toRowTotals('invoiced', worked.invoiced, table),
    creditedBefore: toRowTotals('credited', worked.creditedBefore, table),
    left: toRowTotals('left', worked.left, table),
    own: toTaxedTotals('own', worked.own, table),
    figures: table.table(),
  };
  const id = await keepInvoice(transaction, maker, contract, {
    document,
    working,
    scheduled: null,
    creditsId: invoiceId,
    issuedBy,
    sendMail,
  });
  await settleInvoice(transaction, invoiceId);
  return id;
}
