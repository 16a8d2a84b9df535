import { defineContract } from '../contract.ts';
import { MAKERS } from '../roles.ts';
import { examplePerson, examplePersonInput, personInputSchema, personSchema } from './person.ts';

export const createPerson = defineContract({
  name: 'create-person',
  method: 'POST',
  path: '/api/people',
  summary: 'Enter a person',
  description: 'Pay and burden come from the grade.',
  tag: 'people',
  roles: MAKERS,
  body: personInputSchema,
  answer: personSchema,
  status: 201,
  givesEtag: true,
  example: { body: examplePersonInput, answer: examplePerson },
});
