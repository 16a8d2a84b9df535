import type { addEnquiryHours, BodyOf, EnquiryHoursRecord } from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { requireEnquiry } from './enquiry-records.ts';

const WITH_GRADE = { grade: { select: { code: true } } } as const;
type Row = Prisma.EnquiryHoursGetPayload<{ include: typeof WITH_GRADE }>;

export function toEnquiryHours(row: Row): EnquiryHoursRecord {
  const { id, personId, personName, note } = row;
  return {
    id,
    onDate: row.onDate.toISOString().slice(0, 10),
    personId,
    personName,
    gradeCode: row.grade.code,
    hours: row.hours.toFixed(),
    note,
  };
}

/** The newest first. @throws RequestProblem not-found */
export async function hoursPage(
  database: Database,
  enquiryId: string,
  limit: number,
  after: { day: Date; id: string } | undefined,
): Promise<Row[]> {
  await requireEnquiry(database, enquiryId);
  return database.enquiryHours.findMany({
    where: {
      enquiryId,
      ...(after === undefined
        ? {}
        : { OR: [{ onDate: { lt: after.day } }, { onDate: after.day, id: { lt: after.id } }] }),
    },
    orderBy: [{ onDate: 'desc' }, { id: 'desc' }],
    take: limit + 1,
    include: WITH_GRADE,
  });
}

/** @throws RequestProblem not-found, input-invalid where the person is nobody on record */
export async function addHours(
  database: Prisma.TransactionClient,
  enquiryId: string,
  given: BodyOf<typeof addEnquiryHours>,
): Promise<EnquiryHoursRecord> {
  await requireEnquiry(database, enquiryId);
  const person = await database.person.findUnique({ where: { id: given.personId } });
  if (person === null) throw fieldProblem('personId', 'is nobody on record', 'Choose one of the people.');
  const data = {
    ...given,
    onDate: new Date(given.onDate),
    enquiryId,
    personName: person.name,
    gradeId: person.gradeId,
  };
  return toEnquiryHours(await database.enquiryHours.create({ data, include: WITH_GRADE }));
}

/** @throws RequestProblem not-found */
export async function dropHours(database: Database, enquiryId: string, id: string): Promise<void> {
  const { count } = await database.enquiryHours.deleteMany({ where: { id, enquiryId } });
  if (count === 0) throw notFound('entry of hours');
}
