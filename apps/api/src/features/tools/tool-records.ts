import type { ToolInput, ToolRecord } from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { afterName } from '../../pages/by-name.ts';
import { alreadyTaken } from '../../problems/already-taken.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';
import { type RecordVersion, requireUpdated } from '../../version-match.ts';
import { checkGiven, checkWorksOut } from './check-tool.ts';
import { toColumns, toTool } from './tool-row.ts';

export { toTool };

export function toolPage(database: Database, limit: number, after: string[] | undefined) {
  return database.tool.findMany({
    where: afterName(after),
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    take: limit + 1,
  });
}

/** @throws RequestProblem not-found */
export async function findTool(database: Prisma.TransactionClient, id: string): Promise<ToolRecord> {
  const row = await database.tool.findUnique({ where: { id } });
  if (row === null) throw notFound('tool');
  return toTool(row);
}

async function check(database: Prisma.TransactionClient, given: ToolInput, id?: string): Promise<void> {
  checkGiven(given);
  const known = await database.tool.findUnique({ where: { code: given.code }, select: { id: true } });
  if (known !== null && known.id !== id) throw alreadyTaken('code', given.code);
}

/** @throws RequestProblem already-exists, input-invalid */
export function addTool(database: Database, given: ToolInput): Promise<ToolRecord> {
  return database.$transaction(async (transaction) => {
    await check(transaction, given);
    const row = await transaction.tool.create({ data: toColumns(given) });
    await checkWorksOut(transaction, given.code);
    return toTool(row);
  });
}

/** Machines that name a changed code as attached follow it. @throws RequestProblem version-stale, not-found, already-exists, input-invalid */
export function changeTool(database: Database, where: RecordVersion, given: ToolInput): Promise<ToolRecord> {
  return database.$transaction((transaction) => changeToolIn(transaction, where, given));
}

/** The same within a transaction that changes more. */
export async function changeToolIn(
  transaction: Prisma.TransactionClient,
  where: RecordVersion,
  given: ToolInput,
): Promise<ToolRecord> {
  await check(transaction, given, where.id);
  const before = await findTool(transaction, where.id);
  const data = { ...toColumns(given), version: { increment: 1 } };
  const { count } = await transaction.tool.updateMany({ where, data });
  await requireUpdated(count, 'tool', async () => true);
  if (before.code !== given.code)
    await transaction.$executeRaw`
      update "Tool" set attached = array_replace(attached, ${before.code}, ${given.code}), version = version + 1
      where ${before.code} = any(attached)`;
  await checkWorksOut(transaction, given.code);
  return findTool(transaction, where.id);
}

/** @throws RequestProblem version-stale, not-found, still-in-use */
export function dropTool(database: Database, where: RecordVersion): Promise<void> {
  return database.$transaction(async (transaction) => {
    const { code } = await findTool(transaction, where.id);
    const host = await transaction.tool.findFirst({
      where: { attached: { has: code }, id: { not: where.id } },
      select: { name: true },
    });
    if (host !== null)
      throw new RequestProblem('still-in-use', {
        detail: `"${host.name}" names it as running along. Take it off there first.`,
      });
    const { count } = await transaction.tool.deleteMany({ where });
    await requireUpdated(count, 'tool', async () => true);
  });
}
