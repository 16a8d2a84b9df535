import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { MAKERS } from '../roles.ts';
import { billSchema } from './bill.ts';
import { designFields, designSchema, exampleDesign } from './design.ts';

const { code, name, description, unitSystem, bill } = exampleDesign;

export const createDesign = defineContract({
  name: 'create-design',
  method: 'POST',
  path: '/api/designs',
  summary: 'Enter a design',
  description: 'Without a bill it starts empty; a bill file can be read in afterwards.',
  tag: 'designs',
  roles: MAKERS,
  body: z.strictObject({ ...designFields, bill: billSchema.optional() }),
  answer: designSchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: { body: { code, name, description, unitSystem, bill }, answer: exampleDesign },
});
