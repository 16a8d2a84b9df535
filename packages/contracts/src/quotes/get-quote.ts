import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleQuote, quoteSchema } from './quote.ts';

export const getQuote = defineContract({
  name: 'get-quote',
  method: 'GET',
  path: '/api/quotes/:id',
  summary: 'Read a quote',
  description: 'With its revisions and additions, and what original and accepted additions come to together.',
  tag: 'quotes',
  roles: 'anyone',
  params: recordParams,
  answer: quoteSchema,
  givesEtag: true,
  example: { params: { id: exampleQuote.id }, answer: exampleQuote },
});
