import { listCostSheets } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { toCostSheet, WITH_NAMES } from './cost-sheet-records.ts';

export const answerListCostSheets = handle(listCostSheets, async ({ query, services }) => {
  const [title, id] = readCursor(query.cursor, 2) ?? [];
  const after =
    title === undefined || id === undefined
      ? {}
      : { OR: [{ title: { gt: title } }, { title, id: { gt: id } }] };
  const rows = await services.database.costSheet.findMany({
    where: { ...after, ...(query.designId === undefined ? {} : { designId: query.designId }) },
    orderBy: [{ title: 'asc' }, { id: 'asc' }],
    take: query.limit + 1,
    include: WITH_NAMES,
  });
  return toPage(rows, query.limit, (row) => [row.title, row.id], toCostSheet);
});
