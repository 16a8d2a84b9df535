import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { MAKERS } from '../roles.ts';
import { designFields, designSchema, drawingFields, exampleDesign } from './design.ts';

const { code, name, description, unitSystem, bill, parameters, variants } = exampleDesign;

export const createDesign = defineContract({
  name: 'create-design',
  method: 'POST',
  path: '/api/designs',
  summary: 'Enter a design',
  description: 'Without a bill it starts empty; a bill file can be read in afterwards.',
  tag: 'designs',
  roles: MAKERS,
  body: z.strictObject({ ...designFields, ...z.object(drawingFields).partial().shape }),
  answer: designSchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: {
    body: { code, name, description, unitSystem, bill, parameters, variants },
    answer: exampleDesign,
  },
});
