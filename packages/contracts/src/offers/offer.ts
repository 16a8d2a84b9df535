import { z } from 'zod';
import { clientDocumentSchema, exampleDocument, statedTotalsSchema } from '../quotes/client-document.ts';
import { acceptanceSchema, declineSchema } from '../quotes/quote.ts';
import { writtenText } from '../written-text.ts';

/** The secret part of a client's link: 256 random bits. */
export const offerToken = writtenText({
  pattern: /^[\w-]{43}$/,
  message: 'is no link of ours',
  mend: 'Open the link just as it was sent to you.',
  example: 'x'.repeat(43),
});
export const offerParams = z.strictObject({ token: offerToken });

/** What the client may know of an acceptance: the workshop's own notes stay out. */
const { name, acceptedAt, remark, chosen, acceptedHash } = acceptanceSchema.shape;

/** What stands behind a client's link: the client's document and how it was answered, nothing of ours. */
export const offerSchema = z
  .strictObject({
    state: z.enum(['open', 'accepted', 'declined', 'expired', 'replaced', 'withdrawn']),
    /** Null where it no longer holds because it was replaced or withdrawn. */
    document: clientDocumentSchema.nullable(),
    /** SHA-256 of the document's canonical text; sent back with the acceptance. */
    documentHash: z.string().nullable(),
    acceptance: z
      .strictObject({ name, acceptedAt, remark, chosen, acceptedHash, totals: statedTotalsSchema })
      .nullable(),
    decline: declineSchema.pick({ declinedAt: true, reason: true }).nullable(),
    /** Whom to ask. */
    contact: z.strictObject({ name: z.string(), email: z.string().nullable(), phone: z.string() }),
  })
  .meta({ id: 'Offer' });
export type Offer = z.output<typeof offerSchema>;

export const exampleOffer: z.input<typeof offerSchema> = {
  state: 'open',
  document: exampleDocument,
  documentHash: 'a'.repeat(64),
  acceptance: null,
  decline: null,
  contact: { name: exampleDocument.workshop.name, email: exampleDocument.workshop.email, phone: '' },
};
export const exampleOfferToken = 'x'.repeat(43);
