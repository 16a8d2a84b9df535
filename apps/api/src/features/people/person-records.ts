import type { BodyOf, createPerson, PersonRecord } from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { afterName } from '../../pages/by-name.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { type RecordVersion, requireUpdated } from '../../version-match.ts';

type Given = BodyOf<typeof createPerson>;

const WITH_GRADE = { grade: { select: { code: true, name: true } } } as const;
type PersonRow = Prisma.PersonGetPayload<{ include: typeof WITH_GRADE }>;

export function toPerson(row: PersonRow): PersonRecord {
  const { id, name, gradeId, isDemo, version } = row;
  return {
    id,
    name,
    gradeId,
    gradeCode: row.grade.code,
    gradeName: row.grade.name,
    paidHoursPerYear: row.paidHoursPerYear.toFixed(),
    isDemo,
    version,
  };
}

export function personPage(database: Database, limit: number, after: string[] | undefined) {
  return database.person.findMany({
    where: afterName(after),
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    take: limit + 1,
    include: WITH_GRADE,
  });
}

/** @throws RequestProblem not-found */
export async function findPerson(database: Prisma.TransactionClient, id: string): Promise<PersonRecord> {
  const row = await database.person.findUnique({ where: { id }, include: WITH_GRADE });
  if (row === null) throw notFound('person');
  return toPerson(row);
}

async function requireGrade(database: Prisma.TransactionClient, id: string): Promise<void> {
  if ((await database.labourGrade.count({ where: { id } })) === 0)
    throw fieldProblem('gradeId', 'is no labour grade', 'Give the id of a labour grade.');
}

/** @throws RequestProblem input-invalid */
export async function addPerson(database: Database, given: Given): Promise<PersonRecord> {
  await requireGrade(database, given.gradeId);
  return toPerson(await database.person.create({ data: given, include: WITH_GRADE }));
}

/** @throws RequestProblem version-stale, not-found, input-invalid */
export function changePerson(database: Database, where: RecordVersion, given: Given): Promise<PersonRecord> {
  return database.$transaction(async (transaction) => {
    await requireGrade(transaction, given.gradeId);
    const data = { ...given, version: { increment: 1 } };
    const { count } = await transaction.person.updateMany({ where, data });
    await requireUpdated(count, 'person', () => exists(transaction, where.id));
    return findPerson(transaction, where.id);
  });
}

/** @throws RequestProblem version-stale, not-found */
export async function dropPerson(database: Database, where: RecordVersion): Promise<void> {
  const { count } = await database.person.deleteMany({ where });
  await requireUpdated(count, 'person', () => exists(database, where.id));
}

async function exists(database: Prisma.TransactionClient, id: string): Promise<boolean> {
  return (await database.person.count({ where: { id } })) > 0;
}
