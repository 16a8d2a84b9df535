import { editPerson } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changePerson } from './person-records.ts';

export const answerEditPerson = handle(editPerson, ({ params, body, expectedVersion, services }) =>
  changePerson(services.database, { id: params.id, version: expectedVersion() }, body),
);
