import { randomUUID } from 'node:crypto';
import { mailPaper } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { queueMail } from '../../outbox/queue-mail.ts';
import { findMail } from './mail-records.ts';
import { findPaperToMail } from './paper-mail.ts';

export const answerMailPaper = handle(mailPaper, ({ params: { id }, body, services }) =>
  services.database.$transaction(async (transaction) => {
    const { about, isDemo } = await findPaperToMail(transaction, id);
    const event = `paper-mailed:${randomUUID()}`;
    const queued = await queueMail(transaction, { ...body, event, attachments: [id], about, isDemo });
    return findMail(transaction, queued.id);
  }),
);
