import { setTimeout as wait } from 'node:timers/promises';
import type { BackgroundWork } from '../../background-work.ts';
import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import type { Services } from '../../services.ts';
import { workOutImpact } from './work-out-impact.ts';

// One that has not moved for so long has nobody at work on it any more: its process ended.
const ABANDONED_MS = 60_000;
const LOOK_EVERY_MS = 3_000;
const LONGEST_STOP_MS = 10_000;

/** Impacts that this process works out. */
const underway = new Map<string, Promise<void>>();

/** Notes that a list's impact is to be worked out anew; what was decided is kept. Taking a list over notes it first. */
export async function noteImpact(transaction: Prisma.TransactionClient, listId: string): Promise<void> {
  await transaction.priceImpact.upsert({
    where: { listId },
    create: { listId },
    update: { status: 'waiting', run: { increment: 1 }, onDay: null, problem: null },
  });
}

/** Works on in the background; the promise is for those who wait, and never rejects. */
export function workOn(
  database: Database,
  listId: string,
  today: string,
  onError: (error: unknown) => void,
): Promise<void> {
  const known = underway.get(listId);
  if (known !== undefined) return known;
  const working = workOutImpact(database, listId, today)
    .catch(onError)
    .finally(() => underway.delete(listId));
  underway.set(listId, working);
  return working;
}

/** Begins with a list that was just taken over. */
export function workOnNew(
  { database, clock }: Pick<Services, 'database' | 'clock'>,
  listId: string,
  log: { error: (error: unknown, message: string) => void },
): void {
  void workOn(database, listId, clock().toISOString().slice(0, 10), (error) =>
    log.error(error, 'a price impact was not worked out'),
  );
}

/** Sets an impact going again whose process was killed; whoever asks for it calls this. */
export function workOnAbandoned(
  { database, clock }: Pick<Services, 'database' | 'clock'>,
  row: { listId: string; status: string; updatedAt: Date },
  onError: (error: unknown) => void,
): void {
  const now = clock();
  const isUnfinished = row.status === 'waiting' || row.status === 'working';
  if (!isUnfinished || underway.has(row.listId)) return;
  if (row.status === 'working' && Date.now() - row.updatedAt.getTime() < ABANDONED_MS) return;
  void workOn(database, row.listId, now.toISOString().slice(0, 10), onError);
}

async function takeUpNext(database: Database): Promise<boolean> {
  const next = await database.priceImpact.findFirst({
    where: {
      OR: [
        { status: 'waiting' },
        { status: 'working', updatedAt: { lt: new Date(Date.now() - ABANDONED_MS) } },
      ],
    },
    orderBy: { createdAt: 'asc' },
    select: { listId: true },
  });
  if (next === null) return false;
  await workOn(database, next.listId, new Date().toISOString().slice(0, 10), () => undefined);
  return true;
}

/** Works out, one after the other, what lists that were taken over move, and what a killed process left. */
export const priceImpacts: BackgroundWork = {
  name: 'price-impacts',
  start: ({ database }) => {
    const ending = new AbortController();
    const work = async (): Promise<void> => {
      while (!ending.signal.aborted) {
        // A database that does not answer is asked again.
        const hasWorked = await takeUpNext(database).catch(() => false);
        if (!hasWorked)
          await wait(LOOK_EVERY_MS, undefined, { signal: ending.signal, ref: false }).catch(() => undefined);
      }
    };
    const done = work();
    return async () => {
      ending.abort();
      // What is in hand is taken up again where it stood.
      await Promise.race([done, wait(LONGEST_STOP_MS, undefined, { ref: false })]);
    };
  },
};
