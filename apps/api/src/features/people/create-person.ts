import { createPerson } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addPerson } from './person-records.ts';

export const answerCreatePerson = handle(createPerson, ({ body, services }) =>
  addPerson(services.database, body),
);
