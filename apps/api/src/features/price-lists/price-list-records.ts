import { priceLineFields, type priceLineSchema, priceListSchema } from '@scantling/contracts';
import type { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { notFound } from '../../problems/request-problem.ts';
import type { DatabaseAccess } from './database-access.ts';

export const WITH_COUNT = {
  supplier: { select: { name: true } },
  _count: { select: { lines: true } },
} as const satisfies Prisma.PriceListInclude;

export const WITH_ITEM = {
  item: { select: { code: true, description: true, material: { select: { code: true } } } },
} as const satisfies Prisma.PriceLineInclude;

type ListRow = Prisma.PriceListGetPayload<{ include: typeof WITH_COUNT }>;
type LineRow = Prisma.PriceLineGetPayload<{ include: typeof WITH_ITEM }>;

export function dayText(date: Date): string {
  return date.toISOString().slice(0, 10);
}

export function toPriceList(row: ListRow): z.output<typeof priceListSchema> {
  return {
    id: row.id,
    supplierId: row.supplierId,
    supplierName: row.supplier.name,
    name: row.name,
    validFrom: dayText(row.validFrom),
    validTo: row.validTo === null ? null : dayText(row.validTo),
    isComplete: row.isComplete,
    currency: priceListSchema.shape.currency.parse(row.currency),
    taxIncluded: row.taxIncluded,
    taxRate: row.taxRate.toFixed(),
    taxRecoverable: row.taxRecoverable.toFixed(),
    sourceName: row.sourceName,
    lineCount: row._count.lines,
    createdAt: row.createdAt.toISOString(),
  };
}

export function toPriceLine(row: LineRow): z.output<typeof priceLineSchema> {
  return {
    id: row.id,
    itemId: row.itemId,
    code: row.item.code,
    description: row.item.description,
    material: row.item.material?.code ?? null,
    unit: priceLineFields.shape.unit.parse(row.unit),
    amount: row.amount.toFixed(),
    breakFrom: row.breakFrom.toFixed(),
    breakKind: priceLineFields.shape.breakKind.parse(row.breakKind),
    packSize: row.packSize?.toFixed() ?? null,
    minimumQuantity: row.minimumQuantity?.toFixed() ?? null,
    leadDays: row.leadDays,
    rowNumber: row.rowNumber,
  };
}

/** @throws RequestProblem not-found */
export async function findPriceList(
  database: DatabaseAccess,
  id: string,
): Promise<z.output<typeof priceListSchema>> {
  const row = await database.priceList.findUnique({ where: { id }, include: WITH_COUNT });
  if (row === null) throw notFound('price list');
  return toPriceList(row);
}
