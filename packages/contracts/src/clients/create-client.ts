import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { clientInputSchema, clientSchema, exampleClient, exampleClientInput } from './client.ts';

export const createClient = defineContract({
  name: 'create-client',
  method: 'POST',
  path: '/api/clients',
  summary: 'Enter a client',
  description: 'Personal data: keep to what the work needs.',
  tag: 'clients',
  roles: RECORD_KEEPERS,
  body: clientInputSchema,
  answer: clientSchema,
  status: 201,
  givesEtag: true,
  example: { body: exampleClientInput, answer: exampleClient },
});
