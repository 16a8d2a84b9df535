import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleMaterial } from './material.ts';

export const removeMaterial = defineContract({
  name: 'remove-material',
  method: 'DELETE',
  path: '/api/materials/:id',
  summary: 'Remove a material',
  description: "Refused while a supplier's article is linked to it.",
  tag: 'materials',
  roles: RECORD_KEEPERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleMaterial.id } },
});
