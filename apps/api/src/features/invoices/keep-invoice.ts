import { type InvoiceDocument, invoiceMail, invoicePaper, type Paper } from '@scantling/quoting';
import { storeDocument } from '../../documents/store-document.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { queueMail } from '../../outbox/queue-mail.ts';
import type { Services } from '../../services.ts';
import { textHash } from '../quotes/answer-revision.ts';
import { asJson } from '../quotes/check-draft.ts';
import type { BilledContract } from './billing-records.ts';
import { toDate } from './billing-records.ts';

type Access = Prisma.TransactionClient;
export type PaperMaker = Pick<Services, 'papers'>;

/** Sets a paper and keeps its bytes. */
export async function keepPaper(
  transaction: Access,
  { papers }: PaperMaker,
  { paper, isDemo }: { paper: Paper; isDemo: boolean },
): Promise<string> {
  const { logo } = paper.letterhead;
  const rows = await transaction.picture.findMany({
    where: { sha256: { in: logo === null ? [] : [logo.sha256] } },
    select: { sha256: true, bytes: true },
  });
  const bytes = await papers.render(paper, new Map(rows.map((row) => [row.sha256, row.bytes])));
  const { id } = await storeDocument(transaction, {
    kind: paper.kind,
    fileName: `${paper.heading} ${paper.number}.pdf`,
    mediaType: 'application/pdf',
    bytes,
    isDemo,
  });
  return id;
}

export type InvoiceKept = {
  document: InvoiceDocument;
  working: object;
  scheduled: { revisionId: string; partId: string } | null;
  creditsId: string | null;
  issuedBy: string;
  sendMail: boolean;
};

/** Keeps a numbered invoice or credit note with its paper, and puts its mail into the outbox. @returns its id */
export async function keepInvoice(
  transaction: Access,
  maker: PaperMaker,
  { quote }: BilledContract,
  kept: InvoiceKept,
): Promise<string> {
  const { document, scheduled, creditsId, issuedBy, sendMail } = kept;
  const { kind, number, currency, total, issuedOn, dueOn } = document;
  const { isDemo, client } = quote;
  const paperId = await keepPaper(transaction, maker, { paper: invoicePaper(document), isDemo });
  const { id } = await transaction.invoice.create({
    data: {
      quoteId: quote.id,
      kind,
      number,
      creditsId,
      revisionId: scheduled?.revisionId ?? null,
      partId: scheduled?.partId ?? null,
      issuedOn: toDate(issuedOn),
      dueOn: toDate(dueOn),
      currency,
      total,
      owed: kind === 'credit-note' ? '0' : total,
      document: asJson(document),
      working: asJson(kept.working),
      documentHash: textHash(document),
      paperId,
      issuedBy,
      isDemo,
    },
  });
  if (sendMail && client.email !== null)
    await queueMail(transaction, {
      event: `invoice-issued:${id}`,
      to: { name: client.name, address: client.email },
      ...invoiceMail(document, true),
      attachments: [paperId],
      about: { kind: 'invoice', id },
      isDemo,
    });
  return id;
}
