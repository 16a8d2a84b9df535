import { acceptanceSchema, clientDocumentSchema, invoiceDocumentSchema } from '@scantling/contracts';
import { type AgreedPart, INVOICE_KINDS, type IssuedPaper } from '@scantling/quoting';
import { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';

type Access = Prisma.TransactionClient;

const kindSchema = z.enum(INVOICE_KINDS);

export const BILLED_QUOTE = {
  client: true,
  revisions: {
    where: { state: 'accepted' },
    orderBy: [{ series: 'asc' }, { revision: 'asc' }],
    select: { id: true, document: true, acceptance: true },
  },
  invoices: { orderBy: [{ id: 'asc' }] },
} as const satisfies Prisma.QuoteInclude;
export type BilledQuote = Prisma.QuoteGetPayload<{ include: typeof BILLED_QUOTE }>;
type InvoiceRow = BilledQuote['invoices'][number];

/** Day of a date column, YYYY-MM-DD. */
export function dayOfColumn(date: Date): string {
  return date.toISOString().slice(0, 10);
}

/** A day as the database takes it. */
export function toDate(day: string): Date {
  return new Date(`${day}T00:00:00Z`);
}

/** Holds off everybody else who bills the quote, or takes or delivers for it, until the transaction ends. */
export async function lockQuote(transaction: Access, id: string): Promise<void> {
  await transaction.$queryRaw`select "id" from "Quote" where "id" = ${id} for update`;
}

/** What was accepted: the quote first, then additions. */
export function agreedParts(quote: Pick<BilledQuote, 'revisions'>): AgreedPart[] {
  return quote.revisions.map(({ id, document, acceptance }) => {
    const { chosen, totals } = acceptanceSchema.parse(acceptance);
    return { id, document: clientDocumentSchema.parse(document), chosen, totals };
  });
}

/** An invoice or credit note as later ones count it. */
export function toIssuedPaper(row: InvoiceRow): IssuedPaper {
  const { taxes, total } = invoiceDocumentSchema.parse(row.document);
  const { id, number, creditsId, revisionId, partId } = row;
  return {
    id,
    kind: kindSchema.parse(row.kind),
    number,
    issuedOn: dayOfColumn(row.issuedOn),
    creditsId,
    scheduled: revisionId === null || partId === null ? null : { revisionId, partId },
    taxes,
    total,
  };
}

/**
 * A quote with what was agreed and what was issued on it.
 * @throws RequestProblem not-found; quote-state where nothing is accepted yet
 */
export async function readBilledQuote(database: Access, id: string) {
  const quote = await database.quote.findUnique({ where: { id }, include: BILLED_QUOTE });
  if (quote === null) throw notFound('quote');
  const parts = agreedParts(quote);
  const [first] = parts;
  if (first === undefined)
    throw new RequestProblem('quote-state', {
      detail: 'The quote is not accepted yet. Bill and deliver after the client accepted.',
    });
  return { quote, parts, before: quote.invoices.map(toIssuedPaper), currency: first.document.currency };
}
export type BilledContract = Awaited<ReturnType<typeof readBilledQuote>>;
