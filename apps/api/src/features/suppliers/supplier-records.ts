import { type createSupplier, type Supplier, supplierSchema } from '@scantling/contracts';
import type { z } from 'zod';
import type { Database } from '../../database/connect.ts';
import type { Prisma, Supplier as SupplierRow } from '../../generated/prisma/client.ts';
import { alreadyTaken } from '../../problems/already-taken.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';
import { type RecordVersion, requireUpdated } from '../../version-match.ts';

type Given = z.output<typeof createSupplier.body>;

export function toSupplier(row: SupplierRow): Supplier {
  const { id, code, name, taxIncluded, leadDays, notes, isDemo, version } = row;
  return {
    id,
    code,
    name,
    currency: supplierSchema.shape.currency.parse(row.currency),
    taxIncluded,
    taxRate: row.taxRate.toFixed(),
    taxRecoverable: row.taxRecoverable.toFixed(),
    minimumOrder: row.minimumOrder?.toFixed() ?? null,
    freightPerOrder: row.freightPerOrder?.toFixed() ?? null,
    leadDays,
    notes,
    isDemo,
    version,
  };
}

/** Suppliers by code after the one named by the cursor. */
export function supplierPage(
  database: Database,
  { limit, after, search }: { limit: number; after: string | undefined; search: string | undefined },
): Promise<SupplierRow[]> {
  const part = { contains: search ?? '', mode: 'insensitive' } as const;
  return database.supplier.findMany({
    where: {
      ...(after === undefined ? {} : { code: { gt: after } }),
      ...(search === undefined ? {} : { OR: [{ code: part }, { name: part }] }),
    },
    orderBy: { code: 'asc' },
    take: limit + 1,
  });
}

/** @throws RequestProblem not-found */
export async function findSupplier(database: Prisma.TransactionClient, id: string): Promise<Supplier> {
  const row = await database.supplier.findUnique({ where: { id } });
  if (row === null) throw notFound('supplier');
  return toSupplier(row);
}

async function requireFreeCode(database: Prisma.TransactionClient, code: string, id?: string): Promise<void> {
  const known = await database.supplier.findUnique({ where: { code }, select: { id: true } });
  if (known !== null && known.id !== id) throw alreadyTaken('code', code);
}

/** @throws RequestProblem already-exists */
export async function addSupplier(database: Database, given: Given): Promise<Supplier> {
  await requireFreeCode(database, given.code);
  return toSupplier(await database.supplier.create({ data: given }));
}

/** @throws RequestProblem version-stale, not-found, already-exists */
export function changeSupplier(database: Database, where: RecordVersion, given: Given): Promise<Supplier> {
  return database.$transaction((transaction) => changeSupplierIn(transaction, where, given));
}

/** The same within a transaction that changes more. */
export async function changeSupplierIn(
  transaction: Prisma.TransactionClient,
  where: RecordVersion,
  given: Given,
): Promise<Supplier> {
  await requireFreeCode(transaction, given.code, where.id);
  const data = { ...given, version: { increment: 1 } };
  const { count } = await transaction.supplier.updateMany({ where, data });
  await requireUpdated(count, 'supplier', () => exists(transaction, where.id));
  return findSupplier(transaction, where.id);
}

/** @throws RequestProblem version-stale, not-found, still-in-use where there are price lists */
export async function dropSupplier(database: Database, where: RecordVersion): Promise<void> {
  await database.$transaction(async (transaction) => {
    // The lock keeps a list from being entered between the count and the removal.
    await transaction.$queryRaw`select id from "Supplier" where id = ${where.id} for update`;
    const lists = await transaction.priceList.count({ where: { supplierId: where.id } });
    if (lists > 0)
      throw new RequestProblem('still-in-use', {
        detail: `${lists} price lists of this supplier are kept, since costs that were worked out rest on them.`,
      });
    const { count } = await transaction.supplier.deleteMany({ where });
    await requireUpdated(count, 'supplier', () => exists(transaction, where.id));
  });
}

async function exists(database: Prisma.TransactionClient, id: string): Promise<boolean> {
  return (await database.supplier.count({ where: { id } })) > 0;
}
