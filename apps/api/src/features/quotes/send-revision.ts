import { quoteDraftSchema } from '@scantling/contracts';
import { type ClientDocument, clientDocument, quotePaper } from '@scantling/quoting';
import type { Config } from '../../config.ts';
import { storeDocument } from '../../documents/store-document.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { nextNumber } from '../../numbers/next-number.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import type { Services } from '../../services.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { hashOf, newSecret } from '../../sign-in/secret-text.ts';
import { textHash } from './answer-revision.ts';
import { asJson } from './check-draft.ts';
import { daysAfter, documentWorkshop } from './client-facts.ts';
import { picturesOf } from './document-pictures.ts';
import { markQuoted } from './follow-enquiry.ts';
import { freezeWorking } from './frozen-working.ts';
import { mailOffer, offerPath } from './offer-mail.ts';
import { changeRevision, lockRevision, nextState, requireVersion } from './quote-records.ts';
import { dayOf, type RevisionRow, stateOf } from './quote-rows.ts';
import { requirePriced } from './unpriced-lines.ts';
import { workDraft } from './work-draft.ts';

type Access = Prisma.TransactionClient;
type Sender = Pick<Services, 'random' | 'papers'> & { config: Pick<Config, 'publicUrl' | 'host' | 'port'> };

export type SendWanted = { id: string; version: number; sentBy: string; now: Date };
/** Where the client answers, and whom it was mailed to; both null where it had been sent before. */
export type Sending = { linkPath: string | null; mailTo: string | null };

/** The number of a series of revisions: given at its first sending, and the same for all that follow. */
async function numberOf(transaction: Access, row: RevisionRow, year: number): Promise<string> {
  const { quoteId, series, quote } = row;
  const before = await transaction.quoteRevision.findFirst({
    where: { quoteId, series, number: { not: null } },
    select: { number: true },
  });
  if (before?.number != null) return before.number;
  if (series === 0)
    return (await nextNumber(transaction, { series: 'quote', year, isDemo: quote.isDemo })).number;
  const sent = await transaction.quoteRevision.findMany({
    where: { quoteId, series: { gt: 0 }, number: { not: null } },
    distinct: ['series'],
    select: { series: true },
  });
  return `${quote.number}-A${sent.length + 1}`;
}

/** The accepted offer that an addition comes on top of; null for the quote itself. */
async function addsTo(transaction: Access, row: RevisionRow): Promise<ClientDocument['addsTo']> {
  if (row.series === 0) return null;
  const original = await transaction.quoteRevision.findFirstOrThrow({
    where: { quoteId: row.quoteId, series: 0, state: 'accepted' },
    select: { number: true, acceptance: true },
  });
  const acceptedAt: unknown = Reflect.get(Object(original.acceptance), 'acceptedAt');
  return { number: original.number ?? '', acceptedOn: String(acceptedAt).slice(0, 10) };
}

async function replaceEarlier(transaction: Access, row: RevisionRow): Promise<void> {
  const { quoteId, series } = row;
  await transaction.quoteRevision.updateMany({
    where: { quoteId, series, state: { in: ['sent', 'declined', 'withdrawn'] } },
    data: { state: 'superseded', version: { increment: 1 } },
  });
}

/** The document as it will be frozen, numbered last, since others who want a number wait from then on. */
async function writeDocument(transaction: Access, row: RevisionRow, now: Date) {
  const today = dayOf(now);
  const draft = quoteDraftSchema.parse(row.draft);
  if (draft.lines.length === 0)
    throw fieldProblem('draft.lines', 'are none', 'Enter at least one line before you send it.');
  const worked = await workDraft(transaction, draft, today);
  requirePriced(draft, worked.costed);
  const working = freezeWorking(draft, worked);
  const workshop = await readWorkshop(transaction);
  const original = await addsTo(transaction, row);
  const number = await numberOf(transaction, row, now.getUTCFullYear());
  const { client, title } = row.quote;
  const document = clientDocument(draft, worked.totals, {
    kind: row.series === 0 ? 'quote' : 'addition',
    number,
    revision: row.revision,
    title,
    sentOn: today,
    validUntil: daysAfter(today, draft.validDays),
    workshop: documentWorkshop(workshop),
    client: { name: client.name, addressLines: client.addressLines },
    addsTo: original,
  });
  return { document, working };
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
  await markQuoted(transaction, row.quote.enquiryId);
  const mailTo = await mailOffer(transaction, sender, { row, document, token, paperId: paper.id });
  return { linkPath: offerPath(token), mailTo };
}
