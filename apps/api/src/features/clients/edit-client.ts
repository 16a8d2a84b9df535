import { editClient } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changeClient } from './client-records.ts';

export const answerEditClient = handle(editClient, ({ params, body, expectedVersion, services }) =>
  changeClient(services.database, { id: params.id, version: expectedVersion() }, body),
);
