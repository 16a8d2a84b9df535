import { listSupplierItems } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { toSupplierItem, WITH_MATERIAL } from './supplier-item-records.ts';

export const answerListSupplierItems = handle(listSupplierItems, async ({ query, services }) => {
  const [code, id] = readCursor(query.cursor, 2) ?? [];
  const part = { contains: query.search ?? '', mode: 'insensitive' } as const;
  const rows = await services.database.supplierItem.findMany({
    where: {
      ...(query.supplierId === undefined ? {} : { supplierId: query.supplierId }),
      ...(query.linked === undefined ? {} : { materialId: query.linked === 'true' ? { not: null } : null }),
      AND: [
        query.search === undefined ? {} : { OR: [{ code: part }, { description: part }] },
        // Two suppliers may have the same code.
        code === undefined || id === undefined
          ? {}
          : { OR: [{ code: { gt: code } }, { code, id: { gt: id } }] },
      ],
    },
    include: WITH_MATERIAL,
    orderBy: [{ code: 'asc' }, { id: 'asc' }],
    take: query.limit + 1,
  });
  return toPage(rows, query.limit, (row) => [row.code, row.id], toSupplierItem);
});
