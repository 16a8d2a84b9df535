import { listPriceLines } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { findPriceList, toPriceLine, WITH_ITEM } from './price-list-records.ts';
import { readRowPlace } from './row-place.ts';

export const answerListPriceLines = handle(listPriceLines, async ({ params, query, services }) => {
  await findPriceList(services.database, params.id);
  const after = readRowPlace(readCursor(query.cursor, 2));
  const part = { contains: query.search ?? '', mode: 'insensitive' } as const;
  const rows = await services.database.priceLine.findMany({
    where: {
      listId: params.id,
      ...(query.search === undefined ? {} : { item: { OR: [{ code: part }, { description: part }] } }),
      ...(after === undefined
        ? {}
        : {
            OR: [
              { rowNumber: { gt: after.rowNumber } },
              { rowNumber: after.rowNumber, id: { gt: after.id } },
            ],
          }),
    },
    include: WITH_ITEM,
    orderBy: [{ rowNumber: 'asc' }, { id: 'asc' }],
    take: query.limit + 1,
  });
  return toPage(rows, query.limit, (row) => [String(row.rowNumber), row.id], toPriceLine);
});
