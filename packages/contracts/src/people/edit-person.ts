import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { examplePerson, examplePersonInput, personInputSchema, personSchema } from './person.ts';

export const editPerson = defineContract({
  name: 'edit-person',
  method: 'PUT',
  path: '/api/people/:id',
  summary: 'Change a person',
  description: 'Takes the whole record. Pay and burden come from the grade.',
  tag: 'people',
  roles: MAKERS,
  params: recordParams,
  body: personInputSchema,
  answer: personSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: examplePerson.id },
    body: examplePersonInput,
    answer: { ...examplePerson, version: 2 },
  },
});
