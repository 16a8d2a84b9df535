import { listSuppliers } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { supplierPage, toSupplier } from './supplier-records.ts';

export const answerListSuppliers = handle(listSuppliers, async ({ query, services }) => {
  const { limit, search } = query;
  const after = readCursor(query.cursor, 1)?.[0];
  const rows = await supplierPage(services.database, { limit, after, search });
  return toPage(rows, limit, (row) => [row.code], toSupplier);
});
