import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleRevision } from './quote.ts';

export const previewQuotePaper = defineContract({
  name: 'preview-quote-paper',
  method: 'GET',
  path: '/api/quote-revisions/:id/preview/paper',
  summary: 'See the paper of a draft',
  description: 'The PDF as sending would make it now, but for the number where none has been given yet.',
  tag: 'quotes',
  roles: 'anyone',
  params: recordParams,
  givesFile: ['application/pdf'],
  example: { params: { id: exampleRevision.id } },
});
