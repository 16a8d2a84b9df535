import type { designRevisionSchema, designRevisionSummarySchema } from '@scantling/contracts';
import type { z } from 'zod';
import type { Database } from '../../database/connect.ts';
import type { DesignRevision, Prisma } from '../../generated/prisma/client.ts';
import { notFound } from '../../problems/request-problem.ts';
import { drawingOf, findRevision, unitSystemOf } from './design-records.ts';

type Access = Database | Prisma.TransactionClient;

/** Names of the people and API tokens that made these revisions, by their ids. */
async function makersOf(
  database: Access,
  revisions: readonly Pick<DesignRevision, 'createdBy'>[],
): Promise<ReadonlyMap<string, string>> {
  const ids = [...new Set(revisions.map(({ createdBy }) => createdBy))];
  const wanted = { where: { id: { in: ids } }, select: { id: true, name: true } } as const;
  const users = await database.user.findMany(wanted);
  const tokens = await database.apiToken.findMany(wanted);
  return new Map([...users, ...tokens].map(({ id, name }) => [id, name]));
}

/** Revisions of a design before the one named, the newest first, with who made them. */
export async function pageOfRevisions(
  database: Access,
  designId: string,
  before: number | undefined,
  take: number,
): Promise<z.output<typeof designRevisionSummarySchema>[]> {
  const rows = await database.designRevision.findMany({
    where: { designId, ...(before === undefined ? {} : { number: { lt: before } }) },
    orderBy: { number: 'desc' },
    take,
  });
  const makers = await makersOf(database, rows);
  return rows.map((row) => {
    const { bill, parameters, variants } = drawingOf(row);
    return {
      number: row.number,
      note: row.note,
      madeBy: makers.get(row.createdBy) ?? null,
      createdAt: row.createdAt.toISOString(),
      unitSystem: unitSystemOf(row),
      parts: bill.parts.length,
      operations: bill.operations.length,
      parameters: parameters.length,
      variants: variants.length,
    };
  });
}

/** A revision as it stood. @throws RequestProblem not-found */
export async function requireRevision(database: Access, designId: string, number: number) {
  const found = await findRevision(database, designId, number);
  if (found === null) throw notFound('revision of the design');
  return found;
}

export async function readRevision(
  database: Access,
  designId: string,
  number: number,
): Promise<z.output<typeof designRevisionSchema>> {
  const found = await requireRevision(database, designId, number);
  const makers = await makersOf(database, [found]);
  return {
    number,
    note: found.note,
    madeBy: makers.get(found.createdBy) ?? null,
    createdAt: found.createdAt.toISOString(),
    unitSystem: found.unitSystem,
    ...found.drawing,
  };
}
