import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { givenName, recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleQuote, exampleRevision, quoteRevisionSchema } from './quote.ts';
import { quoteDraftSchema } from './quote-draft.ts';

export const addToQuote = defineContract({
  name: 'add-to-quote',
  method: 'POST',
  path: '/api/quotes/:id/additions',
  summary: 'Begin an addition to an accepted quote',
  description:
    'A change after acceptance: priced, sent and accepted by a link of its own, on top of the original, which stays as it was accepted. Without a draft it starts empty with the original’s taxes, price mode and terms; without a title it is called an addition to the quote.',
  tag: 'quotes',
  roles: MAKERS,
  params: recordParams,
  body: z.strictObject({ title: givenName.optional(), draft: quoteDraftSchema.optional() }),
  answer: quoteRevisionSchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: {
    params: { id: exampleQuote.id },
    body: { title: 'A drawer for gloves' },
    answer: exampleRevision,
  },
});
