import { randomUUID } from 'node:crypto';
import type { Database } from '../database/connect.ts';
import type { OutboxMail } from '../generated/prisma/client.ts';
import { retryDelayS } from './retry-delay.ts';

/** How long a mail is nobody else's; far longer than one attempt may take. */
export const LEASE_S = 600;

const BROKEN_OFF =
  'The program ended while it sent this mail. It may have arrived; it is sent again under the same Message-ID.';

/** A mail that this process alone may send now. */
export type ClaimedMail = OutboxMail & { claim: string };

/**
 * Takes the next mail that is due, or whose sender has died. Rows that another process is taking are skipped, and the
 * time is the database's, so that several processes never take the same mail.
 */
export async function claimMail(database: Database): Promise<ClaimedMail | undefined> {
  const claim = randomUUID();
  const [mail] = await database.$queryRaw<OutboxMail[]>`
    update "OutboxMail" set "state" = 'sending', "attempts" = "attempts" + 1, "claim" = ${claim},
      "claimedUntil" = (now() at time zone 'utc') + make_interval(secs => ${LEASE_S}),
      "lastError" = case when "state" = 'sending' then ${BROKEN_OFF} else "lastError" end,
      "updatedAt" = now() at time zone 'utc', "version" = "version" + 1
    where "id" = (
      select "id" from "OutboxMail" where not "isDemo"
        and (("state" = 'waiting' and "nextAttemptAt" <= now() at time zone 'utc')
          or ("state" = 'sending' and "claimedUntil" < now() at time zone 'utc'))
      order by "nextAttemptAt", "id" limit 1 for update skip locked)
    returning *`;
  return mail === undefined ? undefined : { ...mail, claim };
}

/** Notes that the server took it. A claim that was lost meanwhile changes nothing. */
export async function noteSent(
  database: Database,
  { id, claim }: ClaimedMail,
  sent: { from: string; reply: string },
): Promise<void> {
  await database.$executeRaw`
    update "OutboxMail" set "state" = 'sent', "claim" = null, "claimedUntil" = null, "lastError" = null,
      "sentAt" = now() at time zone 'utc', "sentFrom" = ${sent.from}, "serverReply" = ${sent.reply},
      "updatedAt" = now() at time zone 'utc', "version" = "version" + 1
    where "id" = ${id} and "claim" = ${claim}`;
}

/** Notes why it was not sent: it is tried again later, or has failed where that would not help. */
export async function noteFailure(
  database: Database,
  { id, claim, attempts }: ClaimedMail,
  failure: { words: string; isFinal: boolean },
): Promise<void> {
  const delayS = failure.isFinal ? undefined : retryDelayS(attempts);
  await database.$executeRaw`
    update "OutboxMail" set "state" = ${delayS === undefined ? 'failed' : 'waiting'}, "claim" = null,
      "claimedUntil" = null, "lastError" = ${failure.words},
      "nextAttemptAt" = (now() at time zone 'utc') + make_interval(secs => ${delayS ?? 0}),
      "updatedAt" = now() at time zone 'utc', "version" = "version" + 1
    where "id" = ${id} and "claim" = ${claim}`;
}
