import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { MAKERS } from '../roles.ts';
import { exampleQuote, quoteFields, quoteSchema } from './quote.ts';
import { quoteDraftSchema } from './quote-draft.ts';

const { title, clientId, enquiryId } = exampleQuote;

export const createQuote = defineContract({
  name: 'create-quote',
  method: 'POST',
  path: '/api/quotes',
  summary: 'Begin a quote',
  description:
    'Without a draft it starts with what the workshop’s quotes start with: taxes, price mode, deposit, validity and terms.',
  tag: 'quotes',
  roles: MAKERS,
  body: z.strictObject({ ...quoteFields, draft: quoteDraftSchema.optional() }),
  answer: quoteSchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: { body: { title, clientId, enquiryId }, answer: exampleQuote },
});
