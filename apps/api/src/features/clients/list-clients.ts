import { listClients } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { clientPage, toClient } from './client-records.ts';

export const answerListClients = handle(listClients, async ({ query, services }) => {
  const rows = await clientPage(services.database, query.limit, readCursor(query.cursor, 2));
  return toPage(rows, query.limit, (row) => [row.name, row.id], toClient);
});
