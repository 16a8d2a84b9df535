import type { BodyOf, createLabourGrade, LabourGradeRecord } from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import type { LabourGrade, Prisma } from '../../generated/prisma/client.ts';
import { afterName } from '../../pages/by-name.ts';
import { alreadyTaken } from '../../problems/already-taken.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { type RecordVersion, requireUpdated } from '../../version-match.ts';

type Given = BodyOf<typeof createLabourGrade>;

export function toLabourGrade(row: LabourGrade): LabourGradeRecord {
  const { id, code, name, isOwner, isDemo, version } = row;
  return {
    id,
    code,
    name,
    payPerHour: row.payPerHour.toFixed(),
    burden: row.burden.toFixed(),
    productiveShare: row.productiveShare.toFixed(),
    isOwner,
    isDemo,
    version,
  };
}

export function labourGradePage(database: Database, limit: number, after: string[] | undefined) {
  return database.labourGrade.findMany({
    where: afterName(after),
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    take: limit + 1,
  });
}

/** @throws RequestProblem not-found */
export async function findLabourGrade(
  database: Prisma.TransactionClient,
  id: string,
): Promise<LabourGradeRecord> {
  const row = await database.labourGrade.findUnique({ where: { id } });
  if (row === null) throw notFound('labour grade');
  return toLabourGrade(row);
}

async function check(database: Prisma.TransactionClient, given: Given, id?: string): Promise<void> {
  if (given.isOwner && !/[1-9]/.test(given.payPerHour))
    throw fieldProblem(
      'payPerHour',
      'cannot be 0 for the owner, whose hours are costed even if unpaid',
      'Enter what an hour of theirs is worth.',
    );
  const known = await database.labourGrade.findUnique({ where: { code: given.code }, select: { id: true } });
  if (known !== null && known.id !== id) throw alreadyTaken('code', given.code);
}

/** @throws RequestProblem already-exists, input-invalid */
export async function addLabourGrade(database: Database, given: Given): Promise<LabourGradeRecord> {
  await check(database, given);
  return toLabourGrade(await database.labourGrade.create({ data: given }));
}

/** @throws RequestProblem version-stale, not-found, already-exists, input-invalid */
export function changeLabourGrade(
  database: Database,
  where: RecordVersion,
  given: Given,
): Promise<LabourGradeRecord> {
  return database.$transaction((transaction) => changeLabourGradeIn(transaction, where, given));
}

/** The same within a transaction that changes more. */
export async function changeLabourGradeIn(
  transaction: Prisma.TransactionClient,
  where: RecordVersion,
  given: Given,
): Promise<LabourGradeRecord> {
  await check(transaction, given, where.id);
  const data = { ...given, version: { increment: 1 } };
  const { count } = await transaction.labourGrade.updateMany({ where, data });
  await requireUpdated(count, 'labour grade', () => exists(transaction, where.id));
  return findLabourGrade(transaction, where.id);
}

/** @throws RequestProblem version-stale, not-found, still-in-use */
export async function dropLabourGrade(database: Database, where: RecordVersion): Promise<void> {
  const { count } = await database.labourGrade.deleteMany({ where });
  await requireUpdated(count, 'labour grade', () => exists(database, where.id));
}

async function exists(database: Prisma.TransactionClient, id: string): Promise<boolean> {
  return (await database.labourGrade.count({ where: { id } })) > 0;
}
