import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleMaterial, materialSchema } from './material.ts';

export const getMaterial = defineContract({
  name: 'get-material',
  method: 'GET',
  path: '/api/materials/:id',
  summary: 'Read a material',
  description: 'Its ETag is needed to change it.',
  tag: 'materials',
  roles: 'anyone',
  params: recordParams,
  answer: materialSchema,
  givesEtag: true,
  example: { params: { id: exampleMaterial.id }, answer: exampleMaterial },
});
