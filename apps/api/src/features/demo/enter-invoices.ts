import { invoiceWantedSchema } from '@scantling/contracts';
import { createPaperRenderer } from '@scantling/renderers';
import { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { outstandingLines } from '../delivery-notes/delivery-records.ts';
import { writeDeliveryNote } from '../delivery-notes/write-delivery-note.ts';
import { agreedParts, BILLED_QUOTE, type BilledQuote } from '../invoices/billing-records.ts';
import type { PaperMaker } from '../invoices/keep-invoice.ts';
import { writeCredit, writeInvoice } from '../invoices/write-invoice.ts';
import { writePayment } from '../invoices/write-payment.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { demoJson } from './demo-files.ts';

const DAY_MS = 24 * 60 * 60 * 1000;

const when = { daysAgo: z.number().int().min(0) };
const eventSchema = z.discriminatedUnion('act', [
  z.strictObject({ ...when, act: z.literal('deposit') }),
  z.strictObject({ ...when, act: z.literal('part'), share: z.string() }),
  z.strictObject({ ...when, act: z.literal('pay'), method: z.string(), reference: z.string() }),
  z.strictObject({ ...when, act: z.literal('credit'), amount: z.string(), reason: z.string() }),
  z.strictObject({
    ...when,
    act: z.literal('deliver'),
    line: z.number().int(),
    quantity: z.string(),
    note: z.string(),
  }),
]);
const invoicesSchema = z.strictObject({ quote: z.string(), events: z.array(eventSchema) });
type Event = z.output<typeof eventSchema>;

type Entry = { transaction: Prisma.TransactionClient; papers: PaperMaker; createdBy: string; now: Date };

/** The newest invoice of the quote, which payments and credits of the demo are for. */
async function newestInvoice(transaction: Prisma.TransactionClient, quoteId: string) {
  const where = { quoteId, kind: { not: 'credit-note' } };
  return transaction.invoice.findFirstOrThrow({ where, orderBy: { id: 'desc' } });
}

function firstPayment(quote: BilledQuote) {
  const [part] = agreedParts(quote);
  const [scheduled] = part?.document.schedule ?? [];
  return { kind: 'deposit', revisionId: part?.id, partId: scheduled?.id };
}

async function happen(event: Event, quote: BilledQuote, entry: Entry): Promise<void> {
  const { transaction, papers, createdBy } = entry;
  const now = new Date(entry.now.getTime() - event.daysAgo * DAY_MS);
  const quoteId = quote.id;
  const issuing = { issuedBy: createdBy, now, sendMail: false };
  switch (event.act) {
    case 'deposit':
    case 'part': {
      const of = event.act === 'part' ? { kind: 'share', share: event.share } : undefined;
      const wanted = invoiceWantedSchema.parse(of === undefined ? firstPayment(quote) : { kind: 'part', of });
      await writeInvoice(transaction, papers, { quoteId, wanted, ...issuing });
      return;
    }
    case 'pay': {
      const { id: invoiceId, owed } = await newestInvoice(transaction, quoteId);
      const { method, reference } = event;
      const said = { amount: owed.toString(), receivedOn: dayOf(now), method, reference };
      await writePayment(transaction, papers, { invoiceId, ...said, withReceipt: true, createdBy, now });
      return;
    }
    case 'credit': {
      const { id: invoiceId } = await newestInvoice(transaction, quoteId);
      const { amount, reason } = event;
      await writeCredit(transaction, papers, { invoiceId, amount, reason, ...issuing });
      return;
    }
    case 'deliver': {
      const line = outstandingLines(agreedParts(quote), [])[event.line];
      if (line === undefined) throw new Error(`prisma/demo/invoices.json names no line ${event.line}`);
      const { revisionId, lineId } = line;
      const lines = [{ revisionId, lineId, quantity: event.quantity }];
      const body = { deliveredOn: dayOf(now), orderNumber: '', note: event.note, lines };
      await writeDeliveryNote(transaction, papers, { quoteId, body, createdBy });
    }
  }
}

/** A paid deposit with its receipt, a part invoice that is overdue, a credit note and a delivery note. */
export async function enterInvoices(
  transaction: Prisma.TransactionClient,
  { createdBy, now }: { createdBy: string; now: Date },
): Promise<void> {
  const papers = createPaperRenderer();
  try {
    const { quote: title, events } = invoicesSchema.parse(await demoJson('invoices.json'));
    const where = { isDemo: true, title };
    const quote = await transaction.quote.findFirstOrThrow({ where, include: BILLED_QUOTE });
    for (const event of events)
      await happen(event, quote, { transaction, papers: { papers }, createdBy, now });
  } finally {
    await papers.close();
  }
}
