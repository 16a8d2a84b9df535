import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { examplePerson, personSchema } from './person.ts';

export const listPeople = defineContract({
  name: 'list-people',
  method: 'GET',
  path: '/api/people',
  summary: 'List the people',
  description: 'Who works in the shop, by name, with the grade of each.',
  tag: 'people',
  roles: 'anyone',
  query: pageQuery,
  answer: pageOf(personSchema),
  example: { query: { limit: 50 }, answer: { items: [examplePerson], next: null } },
});
