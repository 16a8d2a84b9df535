import { listPriceLists } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { readDayAndId } from '../../pages/day-cursor.ts';
import { dayText, toPriceList, WITH_COUNT } from './price-list-records.ts';

export const answerListPriceLists = handle(listPriceLists, async ({ query, services }) => {
  const after = readDayAndId(readCursor(query.cursor, 2));
  const rows = await services.database.priceList.findMany({
    where: {
      ...(query.supplierId === undefined ? {} : { supplierId: query.supplierId }),
      ...(after === undefined
        ? {}
        : { OR: [{ validFrom: { lt: after.day } }, { validFrom: after.day, id: { lt: after.id } }] }),
    },
    include: WITH_COUNT,
    orderBy: [{ validFrom: 'desc' }, { id: 'desc' }],
    take: query.limit + 1,
  });
  return toPage(rows, query.limit, (row) => [dayText(row.validFrom), row.id], toPriceList);
});
