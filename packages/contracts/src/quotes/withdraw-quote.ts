import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleRevision, quoteRevisionSchema } from './quote.ts';

export const withdrawQuote = defineContract({
  name: 'withdraw-quote',
  method: 'POST',
  path: '/api/quote-revisions/:id/withdraw',
  summary: 'Withdraw what was sent',
  description: 'The client’s link says so from then on. Nothing accepted can be withdrawn.',
  tag: 'quotes',
  roles: MAKERS,
  params: recordParams,
  answer: quoteRevisionSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: { params: { id: exampleRevision.id }, answer: { ...exampleRevision, state: 'withdrawn' } },
});
