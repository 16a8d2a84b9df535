import {
  acceptanceSchema,
  clientDocumentSchema,
  currencySchema,
  declineSchema,
  type QuoteRevisionAnswer,
  quoteDraftSchema,
  type quoteSummarySchema,
  type revisionSummarySchema,
} from '@scantling/contracts';
import { QUOTE_KINDS, quoteStateOn, STORED_QUOTE_STATES } from '@scantling/quoting';
import { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';

const storedStateSchema = z.enum(STORED_QUOTE_STATES);
const kindSchema = z.enum(QUOTE_KINDS);

/** What lists and heads of quotes read of a revision: none of its documents and figures. */
const SHORT = {
  id: true,
  quoteId: true,
  kind: true,
  series: true,
  revision: true,
  number: true,
  title: true,
  state: true,
  sentAt: true,
  validUntil: true,
  total: true,
  paperId: true,
  updatedAt: true,
  version: true,
} as const satisfies Prisma.QuoteRevisionSelect;

export const WITH_SHORT_REVISIONS = {
  client: { select: { name: true } },
  revisions: { select: SHORT, orderBy: [{ series: 'asc' }, { revision: 'desc' }] },
} as const satisfies Prisma.QuoteInclude;

export type QuoteRow = Prisma.QuoteGetPayload<{ include: typeof WITH_SHORT_REVISIONS }>;
export type ShortRevision = QuoteRow['revisions'][number];

/** A revision whole, but for the figures of ours, which are large and read by themselves. */
export const WHOLE_REVISION = {
  omit: { working: true },
  include: { quote: { include: { client: true } } },
} as const satisfies Omit<Prisma.QuoteRevisionFindUniqueArgs, 'where'>;
export type RevisionRow = Prisma.QuoteRevisionGetPayload<typeof WHOLE_REVISION>;

export function dayOf(date: Date): string {
  return date.toISOString().slice(0, 10);
}

/** The state on a day, from what is kept. */
export function stateOf(row: { state: string; validUntil: Date | null }, today: string) {
  const validUntil = row.validUntil === null ? null : dayOf(row.validUntil);
  return quoteStateOn(storedStateSchema.parse(row.state), validUntil, today);
}

/** The title of a revision: its own, as additions have and whatever was sent, else its quote's. */
export function titleOf(row: { title: string | null }, quote: { title: string }): string {
  return row.title ?? quote.title;
}

export function toRevisionSummary(
  row: ShortRevision,
  quote: { title: string },
  today: string,
): z.output<typeof revisionSummarySchema> {
  return {
    id: row.id,
    quoteId: row.quoteId,
    kind: kindSchema.parse(row.kind),
    series: row.series,
    revision: row.revision,
    number: row.number,
    title: titleOf(row, quote),
    state: stateOf(row, today),
    sentAt: row.sentAt?.toISOString() ?? null,
    validUntil: row.validUntil === null ? null : dayOf(row.validUntil),
    total: row.total,
    paperId: row.paperId,
    updatedAt: row.updatedAt.toISOString(),
    version: row.version,
  };
}

export function toRevision(row: RevisionRow, today: string): QuoteRevisionAnswer {
  return {
    ...toRevisionSummary(row, row.quote, today),
    clientId: row.quote.clientId,
    clientName: row.quote.client.name,
    enquiryId: row.quote.enquiryId,
    draft: quoteDraftSchema.parse(row.draft),
    document: row.document === null ? null : clientDocumentSchema.parse(row.document),
    documentHash: row.documentHash,
    acceptance: row.acceptance === null ? null : acceptanceSchema.parse(row.acceptance),
    decline: row.decline === null ? null : declineSchema.parse(row.decline),
  };
}

/** True where something still waits to be sent by us, or an addition to be answered. */
function hasOpenDraft({ revisions, currentId }: QuoteRow, today: string): boolean {
  return revisions.some(
    (one) =>
      (one.state === 'draft' && one.id !== currentId) ||
      (one.kind === 'addition' && stateOf(one, today) === 'sent'),
  );
}

export function toQuoteSummary(
  row: QuoteRow,
  currency: string,
  today: string,
): z.output<typeof quoteSummarySchema> {
  const current = row.revisions.find(({ id }) => id === row.currentId) ?? row.revisions[0];
  if (current === undefined) throw new TypeError(`quote ${row.id} has no revision`);
  const { id: currentRevisionId, state, total, validUntil, sentAt } = toRevisionSummary(current, row, today);
  const { id, title, clientId, enquiryId, number, isDemo, version } = row;
  return {
    id,
    title,
    clientId,
    enquiryId,
    clientName: row.client.name,
    number,
    state,
    currency: currencySchema.parse(currency),
    total,
    validUntil,
    sentAt,
    currentRevisionId,
    hasOpenDraft: hasOpenDraft(row, today),
    isDemo,
    updatedAt: row.updatedAt.toISOString(),
    version,
  };
}
