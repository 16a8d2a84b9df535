import { createClient } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addClient } from './client-records.ts';

export const answerCreateClient = handle(createClient, ({ body, services }) =>
  addClient(services.database, body),
);
