import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleDesign } from './design.ts';

export const removeDesign = defineContract({
  name: 'remove-design',
  method: 'DELETE',
  path: '/api/designs/:id',
  summary: 'Remove a design',
  description: 'Only while no cost sheet rests on it.',
  tag: 'designs',
  roles: MAKERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleDesign.id } },
});
