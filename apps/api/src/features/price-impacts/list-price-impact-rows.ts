import { listPriceImpactRows } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { decidersOf, findImpact, toImpactRow, WHOLE_ROW } from './impact-records.ts';

export const answerListPriceImpactRows = handle(listPriceImpactRows, async ({ params, query, services }) => {
  const { database } = services;
  const listId = (await findImpact(database, params.id)).listId;
  const [decided, stake, id] = readCursor(query.cursor, 3) ?? [];
  const isDecided = decided === 'true';
  const after =
    stake === undefined || id === undefined
      ? {}
      : {
          OR: [
            ...(isDecided ? [] : [{ isDecided: true }]),
            { isDecided, stake: { lt: stake } },
            { isDecided, stake, id: { gt: id } },
          ],
        };
  const rows = await database.priceImpactRow.findMany({
    where: { listId, isWorked: true, ...after },
    orderBy: [{ isDecided: 'asc' }, { stake: 'desc' }, { id: 'asc' }],
    take: query.limit + 1,
    include: WHOLE_ROW,
  });
  const names = await decidersOf(database, rows);
  return toPage(
    rows,
    query.limit,
    (row) => [String(row.isDecided), row.stake.toFixed(), row.id],
    (row) => toImpactRow(row, names),
  );
});
