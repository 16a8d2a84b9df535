import { listOverheadAmounts } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { overheadAmountPage, toOverheadAmount } from './overhead-amount-records.ts';

export const answerListOverheadAmounts = handle(listOverheadAmounts, async ({ query, services }) => {
  const rows = await overheadAmountPage(services.database, query.limit, readCursor(query.cursor, 2));
  return toPage(rows, query.limit, (row) => [row.name, row.id], toOverheadAmount);
});
