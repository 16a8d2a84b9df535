import { randomUUID } from 'node:crypto';
import { isOneLine } from '@scantling/contracts';
import { z } from 'zod';
import type { Prisma } from '../generated/prisma/client.ts';
import { fieldProblem } from '../problems/request-problem.ts';
import { readWorkshop } from '../shop/workshop-record.ts';

const LONGEST_SUBJECT = 200;
const LONGEST_TEXT = 50_000;
// Attachments grow by a third on their way, and many servers take 25 MB (common practice, no source).
const MOST_ATTACHED_BYTES = 18 * 1024 * 1024;

export type MailGiven = {
  /** Names what the mail is about for good ("quote-sent:<id>"); one event gives one mail. */
  event: string;
  to: { name: string; address: string };
  subject: string;
  text: string;
  /** Ids of stored documents, in the order of the attachments. */
  attachments?: readonly string[];
  /** The record it belongs to, so that its screen finds it. */
  about: { kind: string; id: string };
  /** The mail this is another copy of. */
  copyOf?: string;
  /** Mail of the demo is kept to be read and never sent. */
  isDemo?: boolean;
};

/**
 * The address of a mailbox, as mail servers take it.
 * @throws RequestProblem naming `field`
 */
export function readMailAddress(field: string, address: string): string {
  const trimmed = address.trim();
  const [local = ''] = trimmed.split('@');
  // RFC 5321, 4.5.3.1: 64 octets before the @, 254 in all within the angle brackets.
  const fits = trimmed.length <= 254 && local.length <= 64;
  if (!fits || !z.email().safeParse(trimmed).success)
    throw fieldProblem(field, 'is no e-mail address', 'Write one address, such as "name@place.example".');
  return trimmed;
}

function readLine(field: string, text: string): string {
  const trimmed = text.trim();
  if (!isOneLine(trimmed))
    throw fieldProblem(field, 'holds a line break or another control character', 'Write it on one line.');
  if (trimmed.length > LONGEST_SUBJECT)
    throw fieldProblem(field, 'is too long', `Give at most ${LONGEST_SUBJECT} characters.`);
  return trimmed;
}

function readText(text: string): string {
  const lines = text.replace(/\r\n?/g, '\n').trimEnd();
  if (lines === '' || lines.length > LONGEST_TEXT)
    throw fieldProblem('text', 'is empty or too long', `Give 1 to ${LONGEST_TEXT} characters.`);
  if (/(?![\n\t])\p{Cc}/u.test(lines))
    throw fieldProblem('text', 'holds a control character', 'Take it out.');
  return lines;
}

async function checkAttachments(
  transaction: Prisma.TransactionClient,
  ids: readonly string[],
): Promise<void> {
  const found = await transaction.storedDocument.findMany({
    where: { id: { in: [...ids] } },
    select: { size: true },
  });
  if (found.length !== new Set(ids).size || ids.length !== found.length)
    throw fieldProblem('attachments', 'name a document that is not there, or one twice', 'Store it first.');
  if (found.reduce((sum, { size }) => sum + size, 0) > MOST_ATTACHED_BYTES)
    throw fieldProblem('attachments', 'have more than 18 MB together', 'Attach less.');
}

/** Who an answer goes to, and the domain the message is named under. */
async function readWorkshopMail(transaction: Prisma.TransactionClient) {
  const { settings } = await readWorkshop(transaction);
  const { email } = settings.letterhead;
  return { replyTo: email, domain: email?.split('@')[1] ?? 'scantling.invalid' };
}

/**
 * Puts a mail into the outbox, in the transaction of what it tells about: it leaves after that is kept, and not at all
 * where it is taken back. A second call for the same event changes nothing.
 * @throws RequestProblem input-invalid naming `to.address`, `to.name`, `subject`, `text` or `attachments`
 */
export async function queueMail(
  transaction: Prisma.TransactionClient,
  given: MailGiven,
): Promise<{ id: string; isNew: boolean }> {
  const { event, about, attachments = [], copyOf = null, isDemo = false } = given;
  const row = {
    toName: readLine('to.name', given.to.name),
    toAddress: readMailAddress('to.address', given.to.address),
    subject: readLine('subject', given.subject),
    text: readText(given.text),
  };
  if (row.subject === '') throw fieldProblem('subject', 'is empty', 'Say what the mail is about.');
  await checkAttachments(transaction, attachments);
  const { replyTo, domain } = await readWorkshopMail(transaction);
  const data = {
    ...row,
    event,
    aboutKind: about.kind,
    aboutId: about.id,
    replyTo,
    // Made here and kept over all attempts, so that a mail which arrives twice is seen to be one (RFC 5322, 3.6.4).
    messageId: `<${randomUUID()}@${domain}>`,
    copyOf,
    isDemo,
  };
  const { count } = await transaction.outboxMail.createMany({ data, skipDuplicates: true });
  const { id } = await transaction.outboxMail.findUniqueOrThrow({ where: { event }, select: { id: true } });
  if (count > 0)
    await transaction.mailAttachment.createMany({
      data: attachments.map((documentId, position) => ({ mailId: id, documentId, position })),
    });
  return { id, isNew: count > 0 };
}
