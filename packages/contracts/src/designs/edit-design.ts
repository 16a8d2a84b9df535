import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { designFields, designSchema, drawingFields, exampleDesign } from './design.ts';

const { id, code, name, description, unitSystem, bill, parameters, variants } = exampleDesign;

export const editDesign = defineContract({
  name: 'edit-design',
  method: 'PUT',
  path: '/api/designs/:id',
  summary: 'Change a design',
  description:
    'Every change is a new revision; earlier ones stay as they were. Parameters and variants left out stay as they are.',
  tag: 'designs',
  roles: MAKERS,
  params: recordParams,
  body: z.strictObject({
    ...designFields,
    bill: drawingFields.bill,
    // Left out, they stay as they are.
    parameters: drawingFields.parameters.optional(),
    variants: drawingFields.variants.optional(),
    note: z.string().max(500).default(''),
  }),
  answer: designSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id },
    body: { code, name, description, unitSystem, bill, parameters, variants, note: 'Seat 20 mm wider' },
    answer: { ...exampleDesign, version: 2 },
  },
});
