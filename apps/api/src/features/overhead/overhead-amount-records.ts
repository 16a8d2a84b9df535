import {
  type BodyOf,
  type createOverheadAmount,
  type OverheadAmountRecord,
  overheadAmountInputSchema,
} from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import type { OverheadAmount, Prisma } from '../../generated/prisma/client.ts';
import { afterName } from '../../pages/by-name.ts';
import { alreadyTaken } from '../../problems/already-taken.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { type RecordVersion, requireUpdated } from '../../version-match.ts';

type Given = BodyOf<typeof createOverheadAmount>;

const { home, recoveredAs } = overheadAmountInputSchema.shape;

export function toOverheadAmount(row: OverheadAmount): OverheadAmountRecord {
  return {
    id: row.id,
    name: row.name,
    yearlyAmount: row.yearlyAmount.toFixed(),
    home: home.parse(row.home),
    recoveredAs: recoveredAs.parse(row.recoveredAs),
    note: row.note,
    isDemo: row.isDemo,
    version: row.version,
  };
}

export function overheadAmountPage(database: Database, limit: number, after: string[] | undefined) {
  return database.overheadAmount.findMany({
    where: afterName(after),
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    take: limit + 1,
  });
}

/** @throws RequestProblem not-found */
export async function findOverheadAmount(
  database: Prisma.TransactionClient,
  id: string,
): Promise<OverheadAmountRecord> {
  const row = await database.overheadAmount.findUnique({ where: { id } });
  if (row === null) throw notFound('yearly amount');
  return toOverheadAmount(row);
}

async function check(database: Prisma.TransactionClient, given: Given, id?: string): Promise<void> {
  if (given.home.endsWith('-rate') && given.recoveredAs === null)
    throw fieldProblem(
      'recoveredAs',
      'is missing for an amount whose home is a rate',
      'Say which part of rates recovers it, or give it to a pool.',
    );
  const known = await database.overheadAmount.findUnique({
    where: { name: given.name },
    select: { id: true },
  });
  if (known !== null && known.id !== id) throw alreadyTaken('name', given.name);
}

/** @throws RequestProblem already-exists, input-invalid */
export async function addOverheadAmount(database: Database, given: Given): Promise<OverheadAmountRecord> {
  await check(database, given);
  return toOverheadAmount(await database.overheadAmount.create({ data: given }));
}

/** @throws RequestProblem version-stale, not-found, already-exists, input-invalid */
export function changeOverheadAmount(
  database: Database,
  where: RecordVersion,
  given: Given,
): Promise<OverheadAmountRecord> {
  return database.$transaction((transaction) => changeOverheadAmountIn(transaction, where, given));
}

/** The same within a transaction that changes more. */
export async function changeOverheadAmountIn(
  transaction: Prisma.TransactionClient,
  where: RecordVersion,
  given: Given,
): Promise<OverheadAmountRecord> {
  await check(transaction, given, where.id);
  const data = { ...given, version: { increment: 1 } };
  const { count } = await transaction.overheadAmount.updateMany({ where, data });
  await requireUpdated(count, 'yearly amount', () => exists(transaction, where.id));
  return findOverheadAmount(transaction, where.id);
}

/** @throws RequestProblem version-stale, not-found */
export async function dropOverheadAmount(database: Database, where: RecordVersion): Promise<void> {
  const { count } = await database.overheadAmount.deleteMany({ where });
  await requireUpdated(count, 'yearly amount', () => exists(database, where.id));
}

async function exists(database: Prisma.TransactionClient, id: string): Promise<boolean> {
  return (await database.overheadAmount.count({ where: { id } })) > 0;
}
