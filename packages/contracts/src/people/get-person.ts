import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { examplePerson, personSchema } from './person.ts';

export const getPerson = defineContract({
  name: 'get-person',
  method: 'GET',
  path: '/api/people/:id',
  summary: 'Read a person',
  description: 'With its version as ETag, which a change must name.',
  tag: 'people',
  roles: 'anyone',
  params: recordParams,
  answer: personSchema,
  givesEtag: true,
  example: { params: { id: examplePerson.id }, answer: examplePerson },
});
