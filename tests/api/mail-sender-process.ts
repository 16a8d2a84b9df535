// A program of its own that sends what waits in the outbox, for tests that kill one: DATABASE_URL, SMTP_URL, MAIL_FROM.
import { readConfig } from '../../apps/api/src/config.ts';
import { openDatabase } from '../../apps/api/src/database/connect.ts';
import { startMailSender } from '../../apps/api/src/outbox/mail-sender.ts';

const config = readConfig(process.env);
if (config.databaseUrl === undefined || config.smtp === undefined)
  throw new Error('DATABASE_URL, SMTP_URL and MAIL_FROM say where to send what');
startMailSender(openDatabase(config.databaseUrl, { maxConnections: 2 }), config.smtp, { lookEveryMs: 20 });
process.stdout.write('sending\n');
// Waiting for the next look keeps no process alive by itself.
setInterval(() => undefined, 60_000);
