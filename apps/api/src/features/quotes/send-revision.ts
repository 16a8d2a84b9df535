import { type ClientDocument, quotePaper } from '@scantling/quoting';
import type { Config } from '../../config.ts';
import { storeDocument } from '../../documents/store-document.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import type { Services } from '../../services.ts';
import { hashOf, newSecret } from '../../sign-in/secret-text.ts';
import { textHash } from './answer-revision.ts';
import { asJson } from './check-draft.ts';
import { picturesOf } from './document-pictures.ts';
import { markQuoted } from './follow-enquiry.ts';
import { mailOffer, offerPath } from './offer-mail.ts';
import { keepPrices } from './quote-prices.ts';
import { changeRevision, lockRevision, nextState, requireVersion } from './quote-records.ts';
import { dayOf, type RevisionRow, stateOf } from './quote-rows.ts';
import { writeDocument } from './write-document.ts';

type Access = Prisma.TransactionClient;
type Sender = Pick<Services, 'random' | 'papers'> & { config: Pick<Config, 'publicUrl' | 'host' | 'port'> };

export type SendWanted = { id: string; version: number; sentBy: string; now: Date };
/** Where the client answers, and whom it was mailed to; both null where it had been sent before. */
export type Sending = { linkPath: string | null; mailTo: string | null };

async function replaceEarlier(transaction: Access, row: RevisionRow): Promise<void> {
  const { quoteId, series } = row;
  await transaction.quoteRevision.updateMany({
    where: { quoteId, series, state: { in: ['sent', 'declined', 'withdrawn'] } },
    data: { state: 'superseded', version: { increment: 1 } },
  });
}

async function storePaper(
  transaction: Access,
  { papers }: Sender,
  row: RevisionRow,
  document: ClientDocument,
) {
  const paper = quotePaper(document);
  const bytes = await papers.render(paper, await picturesOf(transaction, document));
  return storeDocument(transaction, {
    kind: document.kind,
    fileName: `${paper.heading} ${document.number}${document.revision > 1 ? ` rev ${document.revision}` : ''}.pdf`,
    mediaType: 'application/pdf',
    bytes,
    isDemo: row.quote.isDemo,
  });
}

/**
 * Sends a draft, whole or not at all: number, frozen document and figures, stored paper, replaced revisions and mail
 * stand in the caller's transaction. What was sent before is left as it is.
 * @throws QuoteStateError, QuotingInputError naming a field of the draft, RequestProblem version-stale
 */
export async function sendRevision(
  transaction: Access,
  sender: Sender,
  { id, version, sentBy, now }: SendWanted,
): Promise<Sending> {
  const row = await lockRevision(transaction, id);
  const today = dayOf(now);
  const state = stateOf(row, today);
  if (state === 'sent' || state === 'expired') return { linkPath: null, mailTo: null };
  const sent = nextState(row, 'send', today);
  requireVersion(row, version);
  const { document, working } = await writeDocument(transaction, row, now);
  const paper = await storePaper(transaction, sender, row, document);
  const token = newSecret(sender.random);
  await replaceEarlier(transaction, row);
  if (row.quote.number === null)
    await transaction.quote.update({ where: { id: row.quoteId }, data: { number: document.number } });
  await changeRevision(transaction, row, {
    state: sent,
    number: document.number,
    title: document.title,
    document: asJson(document),
    working: asJson(working),
    documentHash: textHash(document),
    paperId: paper.id,
    tokenHash: hashOf(token),
    sentAt: now,
    sentBy,
    validUntil: new Date(`${document.validUntil}T00:00:00Z`),
    total: document.totals.total,
  });
  await keepPrices(transaction, id, working);
  await markQuoted(transaction, row.quote.enquiryId);
  const mailTo = await mailOffer(transaction, sender, { row, document, token, paperId: paper.id });
  return { linkPath: offerPath(token), mailTo };
}
