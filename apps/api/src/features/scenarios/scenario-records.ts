import { scenarioFields as fields, type Scenario, type scenarioFields } from '@scantling/contracts';
import type { z } from 'zod';
import type { Prisma, Scenario as ScenarioRow } from '../../generated/prisma/client.ts';
import { alreadyTaken } from '../../problems/already-taken.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { type RecordVersion, requireUpdated } from '../../version-match.ts';

type Access = Prisma.TransactionClient;
type Given = z.output<typeof scenarioFields>;

const MOST_OF_A_SHEET = 50;

function toScenario(row: ScenarioRow): Scenario {
  const { id, costSheetId, name, note, madeBy, isDemo, version } = row;
  return {
    id,
    costSheetId,
    name,
    note,
    changes: fields.shape.changes.parse(row.changes),
    madeBy,
    createdAt: row.createdAt.toISOString(),
    updatedAt: row.updatedAt.toISOString(),
    isDemo,
    version,
  };
}

/** By name. @throws RequestProblem not-found where there is no such cost sheet */
export async function scenariosOf(database: Access, costSheetId: string): Promise<Scenario[]> {
  if ((await database.costSheet.count({ where: { id: costSheetId } })) === 0) throw notFound('cost sheet');
  const rows = await database.scenario.findMany({
    where: { costSheetId },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    take: MOST_OF_A_SHEET,
  });
  return rows.map(toScenario);
}

/** @throws RequestProblem not-found */
export async function findScenario(database: Access, id: string): Promise<Scenario> {
  const row = await database.scenario.findUnique({ where: { id } });
  if (row === null) throw notFound('scenario');
  return toScenario(row);
}

async function requireFreeName(database: Access, costSheetId: string, name: string, id?: string) {
  const known = await database.scenario.findUnique({
    where: { costSheetId_name: { costSheetId, name } },
    select: { id: true },
  });
  if (known !== null && known.id !== id) throw alreadyTaken('name', name);
}

function toData({ name, note, changes }: Given, madeBy: string) {
  return { name, note, changes: changes.map((change) => ({ ...change })), madeBy };
}

/** @throws RequestProblem not-found, already-exists, input-invalid where the sheet has as many as it may */
export async function addScenario(
  transaction: Access,
  costSheetId: string,
  given: Given,
  madeBy: string,
): Promise<Scenario> {
  // The lock keeps two from being added at once beyond what a sheet may keep.
  await transaction.$queryRaw`select id from "CostSheet" where id = ${costSheetId} for update`;
  const known = await scenariosOf(transaction, costSheetId);
  if (known.length >= MOST_OF_A_SHEET)
    throw fieldProblem(
      'name',
      `is one more than the ${MOST_OF_A_SHEET} scenarios a cost sheet keeps`,
      'Remove one that is not needed any more.',
    );
  await requireFreeName(transaction, costSheetId, given.name);
  return toScenario(await transaction.scenario.create({ data: { costSheetId, ...toData(given, madeBy) } }));
}

/** @throws RequestProblem version-stale, not-found, already-exists */
export async function changeScenario(
  transaction: Access,
  where: RecordVersion,
  given: Given,
  madeBy: string,
): Promise<Scenario> {
  const { costSheetId } = await findScenario(transaction, where.id);
  await requireFreeName(transaction, costSheetId, given.name, where.id);
  const data = { ...toData(given, madeBy), version: { increment: 1 } };
  const { count } = await transaction.scenario.updateMany({ where, data });
  await requireUpdated(count, 'scenario', async () => true);
  return findScenario(transaction, where.id);
}

/** @throws RequestProblem version-stale, not-found */
export async function dropScenario(database: Access, where: RecordVersion): Promise<void> {
  const { count } = await database.scenario.deleteMany({ where });
  await requireUpdated(
    count,
    'scenario',
    async () => (await database.scenario.count({ where: { id: where.id } })) > 0,
  );
}
