import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleMaterial, exampleMaterialFields, materialFields, materialSchema } from './material.ts';

export const createMaterial = defineContract({
  name: 'create-material',
  method: 'POST',
  path: '/api/materials',
  summary: 'Enter a material',
  description: 'Its code must be new.',
  tag: 'materials',
  roles: RECORD_KEEPERS,
  body: materialFields,
  answer: materialSchema,
  status: 201,
  idempotent: true,
  givesEtag: true,
  example: { body: exampleMaterialFields, answer: exampleMaterial },
});
