import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordParams } from '../record.ts';
import { exampleDesign } from './design.ts';
import { designRevisionSummarySchema, exampleDesignRevisionSummary } from './design-revision.ts';

export const listDesignRevisions = defineContract({
  name: 'list-design-revisions',
  method: 'GET',
  path: '/api/designs/:id/revisions',
  summary: 'List the revisions of a design',
  description: 'The newest first.',
  tag: 'designs',
  roles: 'anyone',
  params: recordParams,
  query: pageQuery,
  answer: pageOf(designRevisionSummarySchema),
  example: {
    params: { id: exampleDesign.id },
    answer: { items: [exampleDesignRevisionSummary], next: null },
  },
});
