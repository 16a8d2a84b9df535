import { listUsers } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { toUser } from '../../sign-in/to-user.ts';

export const answerListUsers = handle(listUsers, async ({ query, services }) => {
  const [name = '', id = ''] = readCursor(query.cursor, 2) ?? [];
  const rows = await services.database.user.findMany({
    where: query.cursor === undefined ? {} : { OR: [{ name: { gt: name } }, { name, id: { gt: id } }] },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    take: query.limit + 1,
  });
  return toPage(rows, query.limit, (row) => [row.name, row.id], toUser);
});
