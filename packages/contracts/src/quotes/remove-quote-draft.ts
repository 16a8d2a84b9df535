import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleRevision } from './quote.ts';

export const removeQuoteDraft = defineContract({
  name: 'remove-quote-draft',
  method: 'DELETE',
  path: '/api/quote-revisions/:id',
  summary: 'Remove a draft',
  description: 'A quote of which nothing else is left goes with it. What was sent cannot be removed.',
  tag: 'quotes',
  roles: MAKERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleRevision.id } },
});
