import { listEarlyPrices } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { earlyPricePage, readNumber, toKeptEarlyPrice } from './early-price-records.ts';

export const answerListEarlyPrices = handle(listEarlyPrices, async ({ params, query, services }) => {
  const before = readNumber(readCursor(query.cursor, 1));
  const rows = await earlyPricePage(services.database, params.id, query.limit, before);
  return toPage(rows, query.limit, (row) => [String(row.number)], toKeptEarlyPrice);
});
