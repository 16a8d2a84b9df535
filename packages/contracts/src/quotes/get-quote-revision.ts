import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleRevision, quoteRevisionSchema } from './quote.ts';

export const getQuoteRevision = defineContract({
  name: 'get-quote-revision',
  method: 'GET',
  path: '/api/quote-revisions/:id',
  summary: 'Read a revision of a quote',
  description: 'Its draft; once sent also the client’s document as frozen, and how it was answered.',
  tag: 'quotes',
  roles: 'anyone',
  params: recordParams,
  answer: quoteRevisionSchema,
  givesEtag: true,
  example: { params: { id: exampleRevision.id }, answer: exampleRevision },
});
