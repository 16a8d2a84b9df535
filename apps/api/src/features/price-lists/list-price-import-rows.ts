import { listPriceImportRows } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { findPriceImport, importSettingsSchema, toPriceImportRow } from './price-import-records.ts';
import { readRowPlace } from './row-place.ts';

export const answerListPriceImportRows = handle(listPriceImportRows, async ({ params, query, services }) => {
  const { settings } = await findPriceImport(services.database, params.id);
  const { currency } = importSettingsSchema.parse(settings).terms;
  const after = readRowPlace(readCursor(query.cursor, 2));
  const id = after === undefined || !/^\d{1,18}$/.test(after.id) ? 0n : BigInt(after.id);
  const rows = await services.database.fileImportRow.findMany({
    where: {
      importId: params.id,
      ...(query.change === undefined ? {} : { change: query.change }),
      ...(after === undefined
        ? {}
        : { OR: [{ rowNumber: { gt: after.rowNumber } }, { rowNumber: after.rowNumber, id: { gt: id } }] }),
    },
    orderBy: [{ rowNumber: 'asc' }, { id: 'asc' }],
    take: query.limit + 1,
  });
  return toPage(
    rows,
    query.limit,
    (row) => [String(row.rowNumber), String(row.id)],
    (row) => toPriceImportRow(row, currency),
  );
});
