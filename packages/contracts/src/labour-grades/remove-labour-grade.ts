import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleLabourGrade } from './labour-grade.ts';

export const removeLabourGrade = defineContract({
  name: 'remove-labour-grade',
  method: 'DELETE',
  path: '/api/labour-grades/:id',
  summary: 'Remove a labour grade',
  description: 'Refused while people have it. Operations that name its code can no longer be costed.',
  tag: 'labour-grades',
  roles: MAKERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleLabourGrade.id } },
});
