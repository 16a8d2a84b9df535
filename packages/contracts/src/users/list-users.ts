import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { OWNER_ONLY } from '../roles.ts';
import { exampleUser, userSchema } from './user.ts';

export const listUsers = defineContract({
  name: 'list-users',
  method: 'GET',
  path: '/api/users',
  summary: 'List the people who can sign in',
  description: 'By name, with the role of each.',
  tag: 'users',
  roles: OWNER_ONLY,
  query: pageQuery,
  answer: pageOf(userSchema),
  example: { query: { limit: 50 }, answer: { items: [exampleUser], next: null } },
});
