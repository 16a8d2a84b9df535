import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { OWNER_ONLY } from '../roles.ts';
import { apiTokenSchema, exampleApiToken } from './api-token.ts';

export const listApiTokens = defineContract({
  name: 'list-api-tokens',
  method: 'GET',
  path: '/api/api-tokens',
  summary: 'List the tokens of programs',
  description: 'Newest first, revoked ones included. The tokens themselves are not kept.',
  tag: 'api-tokens',
  roles: OWNER_ONLY,
  query: pageQuery,
  answer: pageOf(apiTokenSchema),
  example: { answer: { items: [exampleApiToken], next: null } },
});
