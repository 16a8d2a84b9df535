import { listApiTokens } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { toApiToken, WITH_CREATOR } from './token-row.ts';

export const answerListApiTokens = handle(listApiTokens, async ({ query, services }) => {
  // Ids are UUIDs of version 7, so their order is the order of making.
  const [id] = readCursor(query.cursor, 1) ?? [];
  const rows = await services.database.apiToken.findMany({
    where: id === undefined ? {} : { id: { lt: id } },
    orderBy: { id: 'desc' },
    take: query.limit + 1,
    include: WITH_CREATOR,
  });
  return toPage(rows, query.limit, (row) => [row.id], toApiToken);
});
