import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleMaterial, exampleMaterialFields, materialFields, materialSchema } from './material.ts';

export const editMaterial = defineContract({
  name: 'edit-material',
  method: 'PUT',
  path: '/api/materials/:id',
  summary: 'Change a material',
  description: 'Takes the whole material; what is left out gets its default.',
  tag: 'materials',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: materialFields,
  answer: materialSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleMaterial.id },
    body: exampleMaterialFields,
    answer: { ...exampleMaterial, version: 2 },
  },
});
