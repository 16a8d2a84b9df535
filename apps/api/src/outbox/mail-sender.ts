import { setTimeout as wait } from 'node:timers/promises';
import type { BackgroundWork } from '../background-work.ts';
import type { Database } from '../database/connect.ts';
import { claimMail } from './claim-mail.ts';
import { createMailTransport, sendMail } from './send-mail.ts';
import type { SmtpSettings } from './smtp-settings.ts';

const LOOK_EVERY_MS = 3_000;
const LONGEST_STOP_MS = 10_000;

type SenderOptions = { lookEveryMs?: number };

/**
 * Sends what waits in the outbox, one mail after the other, until it is told to end.
 * @returns what ends it; a mail in hand gets some seconds, after which it is left to be taken up again
 */
export function startMailSender(
  database: Database,
  settings: SmtpSettings,
  { lookEveryMs = LOOK_EVERY_MS }: SenderOptions = {},
): () => Promise<void> {
  const ending = new AbortController();
  const by = { transport: createMailTransport(settings), from: settings.from };
  const sendNext = async (): Promise<boolean> => {
    const mail = await claimMail(database);
    if (mail !== undefined) await sendMail(database, by, mail);
    return mail !== undefined;
  };
  const work = async (): Promise<void> => {
    while (!ending.signal.aborted) {
      // A database that does not answer is asked again; what was claimed meanwhile comes free by itself.
      const hasSent = await sendNext().catch(() => false);
      if (!hasSent)
        await wait(lookEveryMs, undefined, { signal: ending.signal, ref: false }).catch(() => undefined);
    }
  };
  const done = work();
  return async () => {
    ending.abort();
    await Promise.race([done, wait(LONGEST_STOP_MS, undefined, { ref: false })]);
    by.transport.close();
  };
}

/** Without a mail server set, mails wait and can be read on the Mail screen. */
export const mailSender: BackgroundWork = {
  name: 'mail-sender',
  start: ({ config, database }) =>
    config.smtp === undefined ? async () => undefined : startMailSender(database, config.smtp),
};
