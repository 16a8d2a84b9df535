import { removeClient } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dropClient } from './client-records.ts';

export const answerRemoveClient = handle(removeClient, async ({ params, expectedVersion, services }) => {
  await dropClient(services.database, { id: params.id, version: expectedVersion() });
  return undefined;
});
