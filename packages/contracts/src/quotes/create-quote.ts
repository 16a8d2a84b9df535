import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordId } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleQuote, quoteFields, quoteSchema } from './quote.ts';
import { quoteDraftSchema, quotedPieces } from './quote-draft.ts';

const { title, clientId, enquiryId } = exampleQuote;

export const createQuote = defineContract({
  name: 'create-quote',
  method: 'POST',
  path: '/api/quotes',
  summary: 'Begin a quote',
  description:
    'Without a draft it starts with what the workshop’s quotes start with: taxes, price mode, deposit, validity and terms; with `costSheet` also with a line for so many pieces of it.',
  tag: 'quotes',
  roles: MAKERS,
  body: z.strictObject({
    ...quoteFields,
    draft: quoteDraftSchema.optional(),
    /** Becomes the last line. */
    costSheet: z.strictObject({ id: recordId, pieces: quotedPieces }).optional(),
  }),
  answer: quoteSchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: { body: { title, clientId, enquiryId }, answer: exampleQuote },
});
