import { deliveryDocumentSchema, invoiceDocumentSchema } from '@scantling/contracts';
import { deliveryMail, invoiceMail, type PaperMail, receiptMail } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { notFound } from '../../problems/request-problem.ts';

const CLIENT = { quote: { select: { client: { select: { name: true, email: true } } } } } as const;
const PAPERS = {
  invoices: { include: CLIENT },
  receipts: { include: { invoice: { include: CLIENT } } },
  deliveries: { include: CLIENT },
} as const satisfies Prisma.StoredDocumentInclude;

export type PaperToMail = PaperMail & {
  to: { name: string; address: string | null };
  /** The record the mail belongs to. */
  about: { kind: string; id: string };
  isDemo: boolean;
};

type WithClient = { quote: { client: { name: string; email: string | null } } };

function toClient({ quote: { client } }: WithClient): PaperToMail['to'] {
  return { name: client.name, address: client.email };
}

/**
 * What a mail with a stored paper says, and to whom it goes.
 * @throws RequestProblem not-found where there is no such paper, or one that is mailed in another way, as a quote is
 */
export async function findPaperToMail(database: Prisma.TransactionClient, id: string): Promise<PaperToMail> {
  const row = await database.storedDocument.findUnique({
    where: { id },
    select: { isDemo: true, ...PAPERS },
  });
  const [invoice] = row?.invoices ?? [];
  const [payment] = row?.receipts ?? [];
  const [delivery] = row?.deliveries ?? [];
  const isDemo = row?.isDemo ?? false;
  if (invoice !== undefined) {
    const document = invoiceDocumentSchema.parse(invoice.document);
    const about = { kind: 'invoice', id: invoice.id };
    return { ...invoiceMail(document, invoice.owed.gt(0)), to: toClient(invoice), about, isDemo };
  }
  if (payment !== undefined) {
    const { title, client, workshop, currency } = invoiceDocumentSchema.parse(payment.invoice.document);
    const proposed = receiptMail({
      number: payment.receiptNumber ?? '',
      receivedOn: payment.receivedOn.toISOString().slice(0, 10),
      invoiceNumber: payment.invoice.number,
      amount: payment.amount.toString(),
      title,
      client,
      workshop,
      currency,
    });
    const about = { kind: 'invoice', id: payment.invoiceId };
    return { ...proposed, to: toClient(payment.invoice), about, isDemo };
  }
  if (delivery !== undefined) {
    const document = deliveryDocumentSchema.parse(delivery.document);
    const about = { kind: 'delivery-note', id: delivery.id };
    return { ...deliveryMail(document), to: toClient(delivery), about, isDemo };
  }
  throw notFound('invoice, credit note, receipt or delivery note');
}
