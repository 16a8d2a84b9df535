import { listPriceImports } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import { readAbandoned } from './begin-price-import.ts';
import { PRICE_IMPORT_KIND, toPriceImport, WITHOUT_CONTENT } from './price-import-records.ts';

const STATUSES = {
  open: ['reading', 'waiting', 'previewed'],
  ended: ['applied', 'unchanged', 'discarded', 'failed'],
} as const;

/** @throws RequestProblem input-invalid where the first key is no moment */
function readMomentAndId(keys: readonly string[] | undefined): { at: Date; id: string } | undefined {
  if (keys === undefined) return undefined;
  const [moment = '', id = ''] = keys;
  const at = new Date(moment);
  if (Number.isNaN(at.getTime()))
    throw fieldProblem('query.cursor', 'is no cursor of this list', 'Send the `next` of the page before.');
  return { at, id };
}

export const answerListPriceImports = handle(listPriceImports, async ({ query, services, request }) => {
  const { supplierId, state, cursor, limit } = query;
  const after = readMomentAndId(readCursor(cursor, 2));
  const rows = await services.database.fileImport.findMany({
    where: {
      kind: PRICE_IMPORT_KIND,
      ...(supplierId === undefined ? {} : { supplierId }),
      ...(state === undefined ? {} : { status: { in: [...STATUSES[state]] } }),
      ...(after && {
        OR: [{ createdAt: { lt: after.at } }, { createdAt: after.at, id: { lt: after.id } }],
      }),
    },
    omit: WITHOUT_CONTENT,
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
    take: limit + 1,
  });
  for (const row of rows)
    readAbandoned(services, row, (error) => request.log.error(error, 'a price list was not read'));
  return toPage(rows, limit, (row) => [row.createdAt.toISOString(), row.id], toPriceImport);
});
