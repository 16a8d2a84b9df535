import { createHash } from 'node:crypto';
import { type Acceptance, clientDocumentSchema } from '@scantling/contracts';
import { canonicalText, documentTotals, statedTotals } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { asJson } from './check-draft.ts';
import { markWon } from './follow-enquiry.ts';
import { acceptedQuote, readFrozenWorking } from './frozen-working.ts';
import { changeRevision, nextState } from './quote-records.ts';
import type { RevisionRow } from './quote-rows.ts';

type Access = Prisma.TransactionClient;

/** SHA-256 in hex of the one text of a value. */
export function textHash(value: object): string {
  return createHash('sha256').update(canonicalText(value)).digest('hex');
}

export type AcceptanceGiven = Pick<Acceptance, 'name' | 'remark' | 'by'> & {
  chosen: readonly string[];
  at: Date;
  /** The day that decides whether it still held, YYYY-MM-DD. */
  onDay: string;
};

/**
 * Accepts a locked revision: keeps who, when, and the hash of document, choices and totals together.
 * @throws QuoteStateError where it does not hold on that day; QuotingInputError for choices that cannot be
 */
export async function acceptRevision(
  transaction: Access,
  row: RevisionRow,
  { name, remark, by, chosen: given, at, onDay }: AcceptanceGiven,
): Promise<void> {
  const state = nextState(row, 'accept', onDay);
  const document = clientDocumentSchema.parse(row.document);
  const chosen = [...new Set(given)].sort();
  const totals = statedTotals(documentTotals(document, chosen));
  const acceptance: Acceptance = {
    name,
    acceptedAt: at.toISOString(),
    remark,
    chosen,
    totals,
    documentHash: row.documentHash ?? '',
    acceptedHash: textHash({ document, chosen, totals }),
    by,
  };
  const kept = await transaction.quoteRevision.findUniqueOrThrow({
    where: { id: row.id },
    select: { working: true },
  });
  const working = acceptedQuote(document, readFrozenWorking(kept.working), chosen);
  await changeRevision(transaction, row, {
    state,
    acceptance: asJson(acceptance),
    acceptedWorking: asJson(working),
    total: totals.total,
  });
  await markWon(transaction, row.quote.enquiryId, onDay);
}

export type DeclineGiven = {
  reason: string;
  at: Date;
  by: { kind: 'link' } | { kind: 'workshop'; actor: string };
};

/** @throws QuoteStateError where it has been answered already, or was replaced or withdrawn */
export async function declineRevision(
  transaction: Access,
  row: RevisionRow,
  { reason, at, by }: DeclineGiven,
  today: string,
): Promise<void> {
  const state = nextState(row, 'decline', today);
  const decline = { declinedAt: at.toISOString(), reason, by };
  await changeRevision(transaction, row, { state, decline: asJson(decline) });
}
