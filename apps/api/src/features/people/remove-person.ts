import { removePerson } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dropPerson } from './person-records.ts';

export const answerRemovePerson = handle(removePerson, async ({ params, expectedVersion, services }) => {
  await dropPerson(services.database, { id: params.id, version: expectedVersion() });
  return undefined;
});
