import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleClient } from './client.ts';

export const removeClient = defineContract({
  name: 'remove-client',
  method: 'DELETE',
  path: '/api/clients/:id',
  summary: 'Remove a client',
  description: 'Cost sheets made for them stay, without the name.',
  tag: 'clients',
  roles: RECORD_KEEPERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleClient.id } },
});
