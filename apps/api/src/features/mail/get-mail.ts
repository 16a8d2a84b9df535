import { getMail } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findMail } from './mail-records.ts';

export const answerGetMail = handle(getMail, ({ params, services }) =>
  findMail(services.database, params.id),
);
