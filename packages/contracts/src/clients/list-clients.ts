import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { clientSchema, exampleClient } from './client.ts';

export const listClients = defineContract({
  name: 'list-clients',
  method: 'GET',
  path: '/api/clients',
  summary: 'List the clients',
  description: 'By name.',
  tag: 'clients',
  roles: 'anyone',
  query: pageQuery,
  answer: pageOf(clientSchema),
  example: { query: { limit: 50 }, answer: { items: [exampleClient], next: null } },
});
