import { listSupplierItems } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { toSupplierItem, WITH_MATERIAL } from './supplier-item-records.ts';

export const answerListSupplierItems = handle(listSupplierItems, async ({ query, services }) => {
  const after = readCursor(query.cursor, 1)?.[0];
  const part = { contains: query.search ?? '', mode: 'insensitive' } as const;
  const rows = await services.database.supplierItem.findMany({
    where: {
      supplierId: query.supplierId,
      ...(after === undefined ? {} : { code: { gt: after } }),
      ...(query.linked === undefined ? {} : { materialId: query.linked === 'true' ? { not: null } : null }),
      ...(query.search === undefined ? {} : { OR: [{ code: part }, { description: part }] }),
    },
    include: WITH_MATERIAL,
    orderBy: { code: 'asc' },
    take: query.limit + 1,
  });
  return toPage(rows, query.limit, (row) => [row.code], toSupplierItem);
});
