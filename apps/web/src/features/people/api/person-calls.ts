import { createPerson, editPerson, getPerson, listPeople, removePerson } from '@scantling/contracts';
import { recordCalls } from '../../../lib/record-calls.ts';

export const personCalls = recordCalls('people', {
  list: listPeople,
  get: getPerson,
  create: createPerson,
  edit: editPerson,
  remove: removePerson,
});
