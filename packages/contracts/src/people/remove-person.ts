import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { examplePerson } from './person.ts';

export const removePerson = defineContract({
  name: 'remove-person',
  method: 'DELETE',
  path: '/api/people/:id',
  summary: 'Remove a person',
  description: 'Their hours no longer count in what labour rates recover.',
  tag: 'people',
  roles: MAKERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: examplePerson.id } },
});
