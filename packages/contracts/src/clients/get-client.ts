import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { clientSchema, exampleClient } from './client.ts';

export const getClient = defineContract({
  name: 'get-client',
  method: 'GET',
  path: '/api/clients/:id',
  summary: 'Read a client',
  description: 'With its version as ETag, which a change must name.',
  tag: 'clients',
  roles: 'anyone',
  params: recordParams,
  answer: clientSchema,
  givesEtag: true,
  example: { params: { id: exampleClient.id }, answer: exampleClient },
});
