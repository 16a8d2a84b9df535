import { z } from 'zod';
import { currencySchema, figureId, figureTableSchema } from '../figures.ts';
import { calendarDate, givenName, moment, recordId } from '../record.ts';
import { clientDocumentSchema, exampleDocument, statedTotalsSchema } from './client-document.ts';
import { exampleDraft, quoteDraftSchema } from './quote-draft.ts';
import { chosenSchema, quoteKindSchema, quoteStateSchema } from './quote-terms.ts';

const sha256 = z.string().meta({ description: 'SHA-256 in hex' });

/** Who said yes, when, and to what. */
export const acceptanceSchema = z
  .strictObject({
    name: z.string(),
    acceptedAt: moment,
    remark: z.string(),
    chosen: chosenSchema,
    /** What it came to with what was chosen. */
    totals: statedTotalsSchema,
    /** Of the client's document, and of document, choices and totals together: what was accepted. */
    documentHash: sha256,
    acceptedHash: sha256,
    /** By the client's link, or written down here for a client who said it on paper, by phone or by mail. */
    by: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('link') }),
      z.strictObject({ kind: z.literal('workshop'), actor: z.string(), how: z.string() }),
    ]),
  })
  .meta({ id: 'QuoteAcceptance' });
export type Acceptance = z.output<typeof acceptanceSchema>;

export const declineSchema = z
  .strictObject({
    declinedAt: moment,
    reason: z.string(),
    by: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('link') }),
      z.strictObject({ kind: z.literal('workshop'), actor: z.string() }),
    ]),
  })
  .meta({ id: 'QuoteDecline' });

const revisionFields = {
  id: recordId,
  quoteId: recordId,
  kind: quoteKindSchema,
  /** 0 for the quote itself, 1, 2 ... for additions after acceptance. */
  series: z.number().int(),
  /** Counts within its series. */
  revision: z.number().int(),
  /** Given at the first sending of its series. */
  number: z.string().nullable(),
  /** An addition has one of its own; a revision of the quote has the quote's, once sent the one it was sent under. */
  title: z.string(),
  /** As of today: expired is judged by the date of validity when it is read. */
  state: quoteStateSchema,
  sentAt: moment.nullable(),
  validUntil: calendarDate.nullable(),
  /** With tax: as accepted, else as sent with nothing chosen; null in a draft. */
  total: z.string().nullable(),
  /** The paper as it was sent. */
  paperId: recordId.nullable(),
  updatedAt: moment,
  version: z.number().int(),
};

export const revisionSummarySchema = z.strictObject(revisionFields).meta({ id: 'QuoteRevisionSummary' });

/** One revision, with its draft, and with what was frozen when it was sent. */
export const quoteRevisionSchema = z
  .strictObject({
    ...revisionFields,
    clientId: recordId,
    clientName: z.string(),
    enquiryId: recordId.nullable(),
    draft: quoteDraftSchema,
    /** What the client has; null in a draft. */
    document: clientDocumentSchema.nullable(),
    documentHash: sha256.nullable(),
    acceptance: acceptanceSchema.nullable(),
    decline: declineSchema.nullable(),
  })
  .meta({ id: 'QuoteRevision' });
export type QuoteRevisionAnswer = z.output<typeof quoteRevisionSchema>;

export const quoteFields = {
  title: givenName,
  clientId: recordId,
  /** The enquiry it answers. */
  enquiryId: recordId.nullable(),
};

const summaryFields = {
  id: recordId,
  ...quoteFields,
  clientName: z.string(),
  number: z.string().nullable(),
  /** Of the quote itself: the accepted revision, else the newest one sent, else the draft. */
  state: quoteStateSchema,
  currency: currencySchema,
  total: z.string().nullable(),
  validUntil: calendarDate.nullable(),
  sentAt: moment.nullable(),
  /** The revision that state, total and validity are of. */
  currentRevisionId: recordId,
  /** A newer revision or an addition waits to be sent, or an addition to be answered. */
  hasOpenDraft: z.boolean(),
  isDemo: z.boolean(),
  updatedAt: moment,
  version: z.number().int(),
};

export const quoteSummarySchema = z.strictObject(summaryFields).meta({ id: 'QuoteSummary' });

export const quoteSchema = z
  .strictObject({
    ...summaryFields,
    /** Newest first: the quote's own, then its additions. */
    revisions: z.array(revisionSummarySchema),
    /** Original and accepted additions; null before anything is accepted. */
    contract: z
      .strictObject({
        parts: z.array(
          z.strictObject({
            revisionId: recordId,
            kind: quoteKindSchema,
            number: z.string(),
            total: figureId,
          }),
        ),
        total: figureId,
        figures: figureTableSchema,
      })
      .nullable(),
  })
  .meta({ id: 'Quote' });
export type QuoteAnswer = z.output<typeof quoteSchema>;

const id = '0193f6a0-7c11-7000-8000-000000000030';
const clientId = '0193f6a0-7c11-7000-8000-000000000002';
const at = '2026-03-01T09:30:00.000Z';

export const exampleRevisionSummary: z.input<typeof revisionSummarySchema> = {
  id: '0193f6a0-7c11-7000-8000-000000000031',
  quoteId: id,
  kind: 'quote',
  series: 0,
  revision: 1,
  number: 'Q-2026-0007',
  title: 'Two benches for the hall',
  state: 'sent',
  sentAt: at,
  validUntil: '2026-03-31',
  total: exampleDocument.totals.total,
  paperId: '0193f6a0-7c11-7000-8000-000000000041',
  updatedAt: at,
  version: 3,
};

export const exampleRevision: z.input<typeof quoteRevisionSchema> = {
  ...exampleRevisionSummary,
  clientId,
  clientName: 'Greta Lindqvist (invented)',
  enquiryId: null,
  draft: exampleDraft,
  document: exampleDocument,
  documentHash: 'a'.repeat(64),
  acceptance: null,
  decline: null,
};

export const exampleQuoteSummary: z.input<typeof quoteSummarySchema> = {
  id,
  title: 'Two benches for the hall',
  clientId,
  enquiryId: null,
  clientName: 'Greta Lindqvist (invented)',
  number: 'Q-2026-0007',
  state: 'sent',
  currency: 'EUR',
  total: exampleDocument.totals.total,
  validUntil: '2026-03-31',
  sentAt: at,
  currentRevisionId: exampleRevisionSummary.id,
  hasOpenDraft: false,
  isDemo: false,
  updatedAt: at,
  version: 2,
};

export const exampleQuote: z.input<typeof quoteSchema> = {
  ...exampleQuoteSummary,
  revisions: [exampleRevisionSummary],
  contract: null,
};
