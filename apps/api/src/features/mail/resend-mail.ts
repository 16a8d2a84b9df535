import { randomUUID } from 'node:crypto';
import { type BodyOf, type Mail, resendMail } from '@scantling/contracts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { handle } from '../../handle.ts';
import { queueMail } from '../../outbox/queue-mail.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { changeMail, findMail } from './mail-records.ts';

type NewAddress = BodyOf<typeof resendMail>['to'];

async function queueCopy(transaction: Prisma.TransactionClient, mail: Mail, to: NewAddress): Promise<Mail> {
  const { id } = await queueMail(transaction, {
    event: `resend:${randomUUID()}`,
    to: to ?? mail.to,
    subject: mail.subject,
    text: mail.text,
    attachments: mail.attachments.map(({ documentId }) => documentId),
    about: mail.about,
    copyOf: mail.id,
  });
  return findMail(transaction, id);
}

/** @throws RequestProblem mail-not-ready while it is being sent, and for mail of the demo */
async function sendAgain(
  transaction: Prisma.TransactionClient,
  { id, to, now }: { id: string; to: NewAddress; now: Date },
): Promise<Mail> {
  const mail = await findMail(transaction, id);
  if (mail.isDemo)
    throw new RequestProblem('mail-not-ready', {
      detail: 'Mail of the demo is never sent: its people are invented.',
    });
  const goesElsewhere = to !== undefined && to.address.trim() !== mail.to.address;
  if (mail.state === 'sent' || goesElsewhere) return queueCopy(transaction, mail, to);
  return changeMail(transaction, id, {
    from: ['waiting', 'failed', 'cancelled'],
    data: { state: 'waiting', nextAttemptAt: now, ...(mail.state === 'failed' ? { attempts: 0 } : {}) },
    refusal: 'The mail is being sent just now.',
  });
}

export const answerResendMail = handle(resendMail, ({ params, body, services }) =>
  services.database.$transaction((transaction) =>
    sendAgain(transaction, { id: params.id, to: body.to, now: services.clock() }),
  ),
);
