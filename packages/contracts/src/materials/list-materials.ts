import { MATERIAL_FORMS } from '@scantling/costing';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { exampleMaterial, materialSchema } from './material.ts';

export const listMaterials = defineContract({
  name: 'list-materials',
  method: 'GET',
  path: '/api/materials',
  summary: 'List materials',
  description: 'By code. `search` finds part of a code or name; `form` keeps one form.',
  tag: 'materials',
  roles: 'anyone',
  query: pageQuery.extend({
    search: z.string().trim().max(100).optional(),
    form: z.enum(MATERIAL_FORMS).optional(),
  }),
  answer: pageOf(materialSchema),
  example: { answer: { items: [exampleMaterial], next: null } },
});
