import { listPeople } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { personPage, toPerson } from './person-records.ts';

export const answerListPeople = handle(listPeople, async ({ query, services }) => {
  const rows = await personPage(services.database, query.limit, readCursor(query.cursor, 2));
  return toPage(rows, query.limit, (row) => [row.name, row.id], toPerson);
});
