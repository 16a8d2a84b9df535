import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';

// Any number that nothing else locks by.
const DEMO_LOCK = 4_601_126;
const LONGEST_MS = 120_000;

/** Does work whole or not at all, with more time than a request's statement has. */
export function inOneStep<T>(
  database: Database,
  work: (transaction: Prisma.TransactionClient) => Promise<T>,
): Promise<T> {
  return database.$transaction(work, { timeout: LONGEST_MS, maxWait: LONGEST_MS });
}

/**
 * Does work in one step while nobody else loads or removes the demo. Others are sent away rather than kept waiting:
 * each would hold a connection that the work needs.
 * @throws RequestProblem still-in-use
 */
export function withDemoLock<T>(
  database: Database,
  work: (transaction: Prisma.TransactionClient) => Promise<T>,
): Promise<T> {
  return inOneStep(database, async (transaction) => {
    const [lock] = await transaction.$queryRaw<{ isOurs: boolean }[]>`
      select pg_try_advisory_xact_lock(${DEMO_LOCK}) as "isOurs"`;
    if (lock?.isOurs !== true)
      throw new RequestProblem('still-in-use', {
        detail: 'The demo is being loaded or removed just now. Try again in a moment.',
      });
    return work(transaction);
  });
}
