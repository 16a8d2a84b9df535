import { setImmediate as turn } from 'node:timers/promises';
import { decimal } from '@scantling/decimals';
import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { CostingRecords } from '../cost-sheets/costing-records.ts';
import { FrozenAsksReader } from '../quotes/frozen-asks.ts';
import { type CostedTouched, costTouched, type Sides, type Touched } from './cost-touched.ts';
import { findTouched } from './find-touched.ts';

const STEP_ROWS = 200;
const LONGEST_FINDING_MS = 5 * 60_000;

type Impact = { listId: string; run: number; onDay: string };

/** Begins a run: finds what the list touches, in one transaction, unless that was done before a restart. */
async function begin(database: Database, listId: string, today: string): Promise<Impact | null> {
  return database.$transaction(
    async (transaction) => {
      await transaction.$queryRaw`select "listId" from "PriceImpact" where "listId" = ${listId} for update`;
      const row = await transaction.priceImpact.findUnique({
        where: { listId },
        include: { list: { select: { validFrom: true } } },
      });
      if (row === null || row.status === 'done' || row.status === 'failed') return null;
      if (row.status === 'working' && row.onDay !== null)
        return { listId, run: row.run, onDay: row.onDay.toISOString().slice(0, 10) };
      const first = row.list.validFrom.toISOString().slice(0, 10);
      const onDay = first > today ? first : today;
      const touched = await findTouched(transaction, listId, { run: row.run, today });
      await transaction.priceImpact.update({
        where: { listId },
        data: { status: 'working', onDay: new Date(`${onDay}T00:00:00Z`), touched },
      });
      return { listId, run: row.run, onDay };
    },
    { timeout: LONGEST_FINDING_MS, maxWait: 60_000 },
  );
}

type Worked = { id: string; isDecided: boolean; costed: CostedTouched };

function toRecord({ id, costed }: Worked) {
  if ('problem' in costed) return { id, problem: costed.problem, stake: '0' };
  const stake = decimal(costed.costAfter).minus(costed.costBefore).abs().toFixed(6);
  return { id, ...costed, stake };
}

/** Writes what was worked out, all rows by one statement. */
function writeRows(database: Prisma.TransactionClient, worked: readonly Worked[]) {
  return database.$executeRaw`
    update "PriceImpactRow" touched set "isWorked" = true, currency = given.currency,
      "costBefore" = given."costBefore", "costAfter" = given."costAfter", "priceBefore" = given."priceBefore",
      "priceAfter" = given."priceAfter", problem = given.problem, stake = given.stake
    from jsonb_to_recordset(${JSON.stringify(worked.map(toRecord))}::jsonb) as given(id text, currency text,
      "costBefore" numeric, "costAfter" numeric, "priceBefore" numeric, "priceAfter" numeric, problem text,
      stake numeric)
    where touched.id = given.id`;
}

/** What the list does not move is no row to decide on. */
function isStill(costed: CostedTouched): boolean {
  return (
    !('problem' in costed) &&
    costed.costBefore === costed.costAfter &&
    costed.priceBefore === costed.priceAfter
  );
}

interface Batch {
  readonly rows: readonly (Touched & { readonly id: string; readonly isDecided: boolean })[];
  /** The last row's id, where more may follow. */
  readonly last: string | null;
}

/** The next rows to be worked out, with what was frozen of those that are sent. */
async function readBatch(
  database: Database,
  { listId, run }: Impact,
  after: string,
  reader: FrozenAsksReader,
): Promise<Batch> {
  const found = await database.priceImpactRow.findMany({
    where: { listId, run, isWorked: false, id: { gt: after } },
    orderBy: { id: 'asc' },
    take: STEP_ROWS,
    select: {
      id: true,
      isDecided: true,
      costSheetId: true,
      revision: { select: { id: true, state: true, draft: true } },
    },
  });
  const sent = found.flatMap(({ revision }) =>
    revision === null || revision.state === 'draft' ? [] : [revision.id],
  );
  const frozen = await reader.read(database, sent);
  return {
    rows: found.map((row) => ({ ...row, frozen: frozen.get(row.revision?.id ?? '') })),
    last: found.length === STEP_ROWS ? (found.at(-1)?.id ?? null) : null,
  };
}

/** Works rows out and writes them with how far it is, in one transaction. */
async function step(
  database: Database,
  { listId, run }: Impact,
  { rows }: Batch,
  sides: Sides,
): Promise<void> {
  const worked: Worked[] = [];
  for (const row of rows) {
    worked.push({ ...row, costed: await costTouched(row, sides) });
    // Costing is work of the processor: requests that wait are answered between two.
    await turn();
  }
  const dropped = worked.filter(({ isDecided, costed }) => !isDecided && isStill(costed)).map(({ id }) => id);
  const moved = worked.filter(({ id }) => !dropped.includes(id));
  await database.$transaction(
    async (transaction) => {
      await transaction.priceImpactRow.deleteMany({ where: { id: { in: dropped } } });
      await writeRows(transaction, moved);
      // Says with its time that somebody is at work.
      await transaction.priceImpact.updateMany({ where: { listId, run }, data: { status: 'working' } });
    },
    { timeout: 60_000, maxWait: 60_000 },
  );
}

/** All that is left, batch after batch; one is read while the one before it is costed. */
async function workThrough(database: Database, impact: Impact, sides: Sides): Promise<void> {
  const reader = new FrozenAsksReader();
  let next: Promise<Batch> | null = readBatch(database, impact, '', reader);
  while (next !== null) {
    const batch: Batch = await next;
    next = batch.last === null ? null : readBatch(database, impact, batch.last, reader);
    // A failure is met at the next turn; until then it must not count as one that nobody handles.
    next?.catch(() => undefined);
    await step(database, impact, batch, sides);
  }
}

/**
 * Works an impact out from where it stands, step by step; a run that was killed goes on with the rows that are left.
 * @param today YYYY-MM-DD
 */
export async function workOutImpact(database: Database, listId: string, today: string): Promise<void> {
  try {
    const impact = await begin(database, listId, today);
    if (impact === null) return;
    const sides: Sides = {
      withList: new CostingRecords(database, impact.onDay),
      withoutList: new CostingRecords(database, impact.onDay, { without: listId }),
    };
    await workThrough(database, impact, sides);
    const where = { listId, run: impact.run };
    await database.priceImpact.updateMany({ where, data: { status: 'done', problem: null } });
  } catch (error) {
    const problem = 'It could not be worked out. Work it out again.';
    await database.priceImpact.updateMany({ where: { listId }, data: { status: 'failed', problem } });
    throw error;
  }
}
