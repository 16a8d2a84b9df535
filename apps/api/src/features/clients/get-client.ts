import { getClient } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findClient } from './client-records.ts';

export const answerGetClient = handle(getClient, ({ params, services }) =>
  findClient(services.database, params.id),
);
