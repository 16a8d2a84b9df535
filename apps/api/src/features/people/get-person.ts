import { getPerson } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findPerson } from './person-records.ts';

export const answerGetPerson = handle(getPerson, ({ params, services }) =>
  findPerson(services.database, params.id),
);
