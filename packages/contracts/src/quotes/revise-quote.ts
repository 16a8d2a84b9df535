import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleRevision, quoteRevisionSchema } from './quote.ts';

export const reviseQuote = defineContract({
  name: 'revise-quote',
  method: 'POST',
  path: '/api/quote-revisions/:id/revise',
  summary: 'Begin a revision',
  description:
    'A new draft that starts as this revision was; what was sent holds until the draft is sent. Where such a draft is there already, it is the answer.',
  tag: 'quotes',
  roles: MAKERS,
  params: recordParams,
  answer: quoteRevisionSchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: { params: { id: exampleRevision.id }, answer: exampleRevision },
});
