import { defineContract } from '../contract.ts';
import { exampleDesign } from './design.ts';
import { designRevisionParams, designRevisionSchema, exampleDesignRevision } from './design-revision.ts';

export const getDesignRevision = defineContract({
  name: 'get-design-revision',
  method: 'GET',
  path: '/api/designs/:id/revisions/:number',
  summary: 'Read a revision of a design',
  description: 'Bill, parameters and variants as they stood.',
  tag: 'designs',
  roles: 'anyone',
  params: designRevisionParams,
  answer: designRevisionSchema,
  example: { params: { id: exampleDesign.id, number: 2 }, answer: exampleDesignRevision },
});
