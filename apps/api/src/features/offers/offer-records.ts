import { acceptanceSchema, clientDocumentSchema, declineSchema, type Offer } from '@scantling/contracts';
import type { QuoteState } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import type { Services } from '../../services.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { hashOf, isSameHash } from '../../sign-in/secret-text.ts';
import { documentWorkshop } from '../quotes/client-facts.ts';
import { findRevisionRow } from '../quotes/quote-records.ts';
import { type RevisionRow, stateOf } from '../quotes/quote-rows.ts';

type Access = Prisma.TransactionClient;

const OFFER_STATES: Readonly<Record<QuoteState, Offer['state']>> = {
  draft: 'withdrawn',
  sent: 'open',
  accepted: 'accepted',
  declined: 'declined',
  expired: 'expired',
  superseded: 'replaced',
  withdrawn: 'withdrawn',
};

function unknownOffer(): RequestProblem {
  return new RequestProblem('not-found', {
    detail: 'No offer stands behind this link. Open it just as it was sent to you, or ask the workshop.',
  });
}

/** @throws RequestProblem too-many-requests */
function requireFew(attempts: Services['offerReads'], key: string): void {
  const wait = attempts.begin(key);
  if (wait > 0) throw new RequestProblem('too-many-requests', { headers: { 'retry-after': String(wait) } });
}

/**
 * The id of the revision behind a client's link. Requests and wrong links are counted per network address.
 * @throws RequestProblem not-found, too-many-requests
 */
export async function findOfferId(
  { database, offerReads, offerMisses }: Pick<Services, 'database' | 'offerReads' | 'offerMisses'>,
  token: string,
  address: string,
): Promise<string> {
  requireFew(offerReads, address);
  requireFew(offerMisses, address);
  const hash = hashOf(token);
  const row = await database.quoteRevision.findUnique({
    where: { tokenHash: hash },
    select: { id: true, tokenHash: true },
  });
  if (row?.tokenHash == null || !isSameHash(row.tokenHash, hash)) throw unknownOffer();
  offerMisses.succeeded(address);
  return row.id;
}

/** What the client sees of a revision: its document while it holds or was answered, and nothing of ours. */
export async function toOffer(database: Access, row: RevisionRow, today: string): Promise<Offer> {
  const state = OFFER_STATES[stateOf(row, today)];
  const isOver = state === 'replaced' || state === 'withdrawn';
  const { name, email, phone } = documentWorkshop(await readWorkshop(database));
  const acceptance = row.acceptance === null ? null : acceptanceSchema.parse(row.acceptance);
  const decline = row.decline === null ? null : declineSchema.parse(row.decline);
  return {
    state,
    document: isOver ? null : clientDocumentSchema.parse(row.document),
    documentHash: isOver ? null : row.documentHash,
    acceptance:
      acceptance === null
        ? null
        : {
            name: acceptance.name,
            acceptedAt: acceptance.acceptedAt,
            remark: acceptance.remark,
            chosen: acceptance.chosen,
            acceptedHash: acceptance.acceptedHash,
            totals: acceptance.totals,
          },
    decline: decline === null || isOver ? null : { declinedAt: decline.declinedAt, reason: decline.reason },
    contact: { name, email, phone },
  };
}

export async function findOffer(database: Access, id: string, today: string): Promise<Offer> {
  return toOffer(database, await findRevisionRow(database, id), today);
}

const CLOSED_WORDS: Readonly<Record<Exclude<Offer['state'], 'open'>, string>> = {
  accepted: 'This offer has been accepted already.',
  declined: 'This offer has been declined.',
  expired: 'This offer could be accepted until the day it names, which has passed.',
  replaced: 'This offer has been replaced by a newer one.',
  withdrawn: 'This offer has been withdrawn.',
};

/** @throws RequestProblem offer-closed saying why, and whom to ask */
export async function requireOpen(database: Access, row: RevisionRow, today: string): Promise<void> {
  const { state, contact } = await toOffer(database, row, today);
  if (state === 'open') return;
  const ways = [contact.email, contact.phone].filter((way) => way !== null && way !== '');
  const whom = ways.length === 0 ? contact.name : `${contact.name} (${ways.join(', ')})`;
  throw new RequestProblem('offer-closed', { detail: `${CLOSED_WORDS[state]} Please ask ${whom}.` });
}
