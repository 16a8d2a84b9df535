import { createClient, editClient, getClient, listClients, removeClient } from '@scantling/contracts';
import { recordCalls } from '../../../lib/record-calls.ts';

export const clientCalls = recordCalls('clients', {
  list: listClients,
  get: getClient,
  create: createClient,
  edit: editClient,
  remove: removeClient,
});
