import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { clientInputSchema, clientSchema, exampleClient, exampleClientInput } from './client.ts';

export const editClient = defineContract({
  name: 'edit-client',
  method: 'PUT',
  path: '/api/clients/:id',
  summary: 'Change a client',
  description: 'Takes the whole record. Personal data: keep to what the work needs.',
  tag: 'clients',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: clientInputSchema,
  answer: clientSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleClient.id },
    body: exampleClientInput,
    answer: { ...exampleClient, version: 2 },
  },
});
