import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { designSchema, exampleDesign } from './design.ts';

export const getDesign = defineContract({
  name: 'get-design',
  method: 'GET',
  path: '/api/designs/:id',
  summary: 'Read a design',
  description: 'With the bill of materials of its newest revision.',
  tag: 'designs',
  roles: 'anyone',
  params: recordParams,
  answer: designSchema,
  givesEtag: true,
  example: { params: { id: exampleDesign.id }, answer: exampleDesign },
});
