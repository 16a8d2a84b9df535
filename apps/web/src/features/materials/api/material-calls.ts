import {
  createMaterial,
  editMaterial,
  getMaterial,
  listMaterials,
  removeMaterial,
} from '@scantling/contracts';
import { recordCalls } from '../../../lib/record-calls.ts';

export const materialCalls = recordCalls('materials', {
  list: listMaterials,
  get: getMaterial,
  create: createMaterial,
  edit: editMaterial,
  remove: removeMaterial,
});
