import { listExchangeRates } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { readDayAndId } from '../../pages/day-cursor.ts';
import { toExchangeRate } from './exchange-rate-records.ts';

export const answerListExchangeRates = handle(listExchangeRates, async ({ query, services }) => {
  const after = readDayAndId(readCursor(query.cursor, 2));
  const rows = await services.database.exchangeRate.findMany({
    where: {
      ...(query.from === undefined ? {} : { from: query.from }),
      ...(query.to === undefined ? {} : { to: query.to }),
      ...(after === undefined
        ? {}
        : { OR: [{ onDate: { lt: after.day } }, { onDate: after.day, id: { lt: after.id } }] }),
    },
    orderBy: [{ onDate: 'desc' }, { id: 'desc' }],
    take: query.limit + 1,
  });
  return toPage(rows, query.limit, (row) => [row.onDate.toISOString().slice(0, 10), row.id], toExchangeRate);
});
