import type { LabourGrade } from '@scantling/costing';
import type { Prisma } from '../generated/prisma/client.ts';

/** Every labour grade as costing takes it (id = code), by code. */
export async function readCostingGrades(database: Prisma.TransactionClient): Promise<LabourGrade[]> {
  const rows = await database.labourGrade.findMany({ orderBy: { code: 'asc' } });
  return rows.map((row) => ({
    id: row.code,
    name: row.name,
    payPerHour: row.payPerHour.toFixed(),
    burden: row.burden.toFixed(),
    productiveShare: row.productiveShare.toFixed(),
    isOwner: row.isOwner,
  }));
}

/** Hours paid in a year with the grade that works them. */
export interface PaidHours {
  readonly personId: string;
  readonly name: string;
  /** Code of the grade. */
  readonly gradeId: string;
  readonly hoursPerYear: string;
}

export async function readPaidHours(database: Prisma.TransactionClient): Promise<PaidHours[]> {
  const rows = await database.person.findMany({ orderBy: { id: 'asc' }, include: { grade: true } });
  return rows.map((row) => ({
    personId: row.id,
    name: row.name,
    gradeId: row.grade.code,
    hoursPerYear: row.paidHoursPerYear.toFixed(),
  }));
}
