import type { BodyOf, ClientRecord, createClient } from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import type { Client, Prisma } from '../../generated/prisma/client.ts';
import { afterName } from '../../pages/by-name.ts';
import { notFound } from '../../problems/request-problem.ts';
import { type RecordVersion, requireUpdated } from '../../version-match.ts';

type Given = BodyOf<typeof createClient>;

export function toClient(row: Client): ClientRecord {
  const { id, name, email, phone, taxNumber, notes, isDemo, version } = row;
  const address = { lines: row.addressLines, countryCode: row.countryCode };
  const createdAt = row.createdAt.toISOString();
  return { id, name, email, phone, address, taxNumber, notes, isDemo, version, createdAt };
}

/** The columns of a client as given. */
export function toClientColumns({ address, ...given }: Given) {
  return { ...given, addressLines: address.lines, countryCode: address.countryCode };
}

export function clientPage(database: Database, limit: number, after: string[] | undefined) {
  return database.client.findMany({
    where: afterName(after),
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    take: limit + 1,
  });
}

/** @throws RequestProblem not-found */
export async function findClient(database: Prisma.TransactionClient, id: string): Promise<ClientRecord> {
  const row = await database.client.findUnique({ where: { id } });
  if (row === null) throw notFound('client');
  return toClient(row);
}

export async function addClient(database: Database, given: Given): Promise<ClientRecord> {
  return toClient(await database.client.create({ data: toClientColumns(given) }));
}

/** @throws RequestProblem version-stale, not-found */
export function changeClient(database: Database, where: RecordVersion, given: Given): Promise<ClientRecord> {
  return database.$transaction(async (transaction) => {
    const data = { ...toClientColumns(given), version: { increment: 1 } };
    const { count } = await transaction.client.updateMany({ where, data });
    await requireUpdated(count, 'client', () => exists(transaction, where.id));
    return findClient(transaction, where.id);
  });
}

/** @throws RequestProblem version-stale, not-found */
export async function dropClient(database: Database, where: RecordVersion): Promise<void> {
  const { count } = await database.client.deleteMany({ where });
  await requireUpdated(count, 'client', () => exists(database, where.id));
}

async function exists(database: Prisma.TransactionClient, id: string): Promise<boolean> {
  return (await database.client.count({ where: { id } })) > 0;
}
