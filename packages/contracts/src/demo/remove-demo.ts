import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { OWNER_ONLY } from '../roles.ts';
import { demoContentSchema, exampleDemoContent } from './demo-content.ts';

const count = z.number().int().min(0);

export const removeDemo = defineContract({
  name: 'remove-demo',
  method: 'DELETE',
  path: '/api/demo',
  summary: 'Remove the demo workshop',
  description:
    'In one step, with its user. Own records stay, and so do the demo records they rest on: these become own. Where nobody is left who can sign in, the answer has the one-time link by which the first owner is set up.',
  tag: 'demo',
  roles: OWNER_ONLY,
  answer: z.strictObject({
    removed: demoContentSchema,
    /** Demo records that own ones rest on and that are own from now on. */
    kept: z.strictObject({
      designs: count,
      clients: count,
      materials: count,
      suppliers: count,
      grades: count,
      tools: count,
    }),
    /** The name of the demo's workshop, where yours still bears it; null where it has one of its own or is gone. */
    inventedName: z.string().nullable(),
    /** Where the first owner is set up, shown this once; null while somebody can sign in. */
    setUpPath: z.string().nullable(),
  }),
  example: {
    answer: {
      removed: exampleDemoContent,
      kept: { designs: 0, clients: 0, materials: 0, suppliers: 0, grades: 0, tools: 0 },
      inventedName: null,
      setUpPath: null,
    },
  },
});
