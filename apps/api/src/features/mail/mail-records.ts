import { type Mail, type MailState, type MailSummary, mailStateSchema } from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import type { OutboxMail, Prisma } from '../../generated/prisma/client.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';

const ATTACHED = {
  attachments: {
    orderBy: { position: 'asc' },
    include: { document: { select: { fileName: true, mediaType: true, size: true } } },
  },
} as const;

export function toMailSummary(row: OutboxMail): MailSummary {
  const isWaiting = row.state === 'waiting';
  return {
    id: row.id,
    to: { name: row.toName, address: row.toAddress },
    subject: row.subject,
    state: mailStateSchema.parse(row.state),
    attempts: row.attempts,
    lastError: row.lastError,
    nextAttemptAt: isWaiting ? row.nextAttemptAt.toISOString() : null,
    sentAt: row.sentAt?.toISOString() ?? null,
    about: { kind: row.aboutKind, id: row.aboutId },
    copyOf: row.copyOf,
    isDemo: row.isDemo,
    createdAt: row.createdAt.toISOString(),
    version: row.version,
  };
}

type MailsWanted = {
  state?: MailState | undefined;
  aboutKind?: string | undefined;
  aboutId?: string | undefined;
};

/** The newest first: ids are made in the order of time. */
export function mailPage(
  database: Database,
  { state, aboutKind, aboutId }: MailsWanted,
  page: { limit: number; after: string[] | undefined },
) {
  const wanted = Object.entries({ state, aboutKind, aboutId }).filter(([, value]) => value !== undefined);
  const [before] = page.after ?? [];
  return database.outboxMail.findMany({
    where: { ...Object.fromEntries(wanted), ...(before === undefined ? {} : { id: { lt: before } }) },
    orderBy: { id: 'desc' },
    take: page.limit + 1,
  });
}

/** The mails a stored document was attached to, the newest first. */
export function mailsWith(database: Prisma.TransactionClient, documentId: string): Promise<OutboxMail[]> {
  return database.outboxMail.findMany({
    where: { attachments: { some: { documentId } } },
    orderBy: { id: 'desc' },
    take: 50,
  });
}

/** @throws RequestProblem not-found */
export async function findMail(database: Prisma.TransactionClient, id: string): Promise<Mail> {
  const row = await database.outboxMail.findUnique({ where: { id }, include: ATTACHED });
  if (row === null) throw notFound('mail');
  return {
    ...toMailSummary(row),
    replyTo: row.replyTo,
    text: row.text,
    attachments: row.attachments.map(({ documentId, document }) => ({ documentId, ...document })),
    messageId: row.messageId,
    sentFrom: row.sentFrom,
    serverReply: row.serverReply,
  };
}

/**
 * Changes a mail that is in one of these states.
 * @throws RequestProblem not-found, or mail-not-ready where it is in another
 */
export async function changeMail(
  transaction: Prisma.TransactionClient,
  id: string,
  change: { from: readonly MailState[]; data: Prisma.OutboxMailUpdateManyMutationInput; refusal: string },
): Promise<Mail> {
  const { count } = await transaction.outboxMail.updateMany({
    where: { id, state: { in: [...change.from] } },
    data: { ...change.data, version: { increment: 1 } },
  });
  const mail = await findMail(transaction, id);
  if (count === 0) throw new RequestProblem('mail-not-ready', { detail: change.refusal });
  return mail;
}
