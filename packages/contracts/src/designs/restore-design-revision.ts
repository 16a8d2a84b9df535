import { defineContract } from '../contract.ts';
import { MAKERS } from '../roles.ts';
import { designSchema, exampleDesign } from './design.ts';
import { designRevisionParams } from './design-revision.ts';

export const restoreDesignRevision = defineContract({
  name: 'restore-design-revision',
  method: 'POST',
  path: '/api/designs/:id/revisions/:number/restore',
  summary: 'Bring back an earlier revision of a design',
  description:
    'As a new revision with its bill, parameters, variants and unit; nothing that came after it is lost. What it names must still be there.',
  tag: 'designs',
  roles: MAKERS,
  params: designRevisionParams,
  answer: designSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: { params: { id: exampleDesign.id, number: 1 }, answer: { ...exampleDesign, version: 3 } },
});
