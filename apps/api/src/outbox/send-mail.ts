import { createTransport } from 'nodemailer';
import type { Database } from '../database/connect.ts';
import { readDocument } from '../documents/store-document.ts';
import { type ClaimedMail, noteFailure, noteSent } from './claim-mail.ts';
import { deliveryFailure, printable } from './delivery-failure.ts';
import type { SmtpSettings } from './smtp-settings.ts';

const CONNECTION_MS = 20_000;
const SILENCE_MS = 60_000;
/** One whole attempt; well within the lease of a claim. */
const ATTEMPT_MS = 180_000;

/** A connection to the mail server for each mail; nothing is kept open between them. */
export function createMailTransport(settings: SmtpSettings) {
  const { host, port, isTlsFromStart, needsTls, signIn } = settings;
  return createTransport({
    host,
    port,
    secure: isTlsFromStart,
    requireTLS: needsTls,
    connectionTimeout: CONNECTION_MS,
    greetingTimeout: CONNECTION_MS,
    socketTimeout: SILENCE_MS,
    disableFileAccess: true,
    disableUrlAccess: true,
    ...(signIn === undefined ? {} : { auth: { user: signIn.user, pass: signIn.password } }),
  });
}

export type MailTransport = ReturnType<typeof createMailTransport>;

async function readAttachments(database: Database, mailId: string) {
  const rows = await database.mailAttachment.findMany({ where: { mailId }, orderBy: { position: 'asc' } });
  const read = rows.map(async ({ documentId }) => {
    const { fileName, mediaType, bytes } = await readDocument(database, documentId);
    return { filename: fileName, contentType: mediaType, content: Buffer.from(bytes) };
  });
  return Promise.all(read);
}

/**
 * One attempt at a claimed mail; how it ended is noted in the outbox.
 * @throws only where the database fails
 */
export async function sendMail(
  database: Database,
  { transport, from }: { transport: MailTransport; from: SmtpSettings['from'] },
  mail: ClaimedMail,
): Promise<void> {
  const attachments = await readAttachments(database, mail.id);
  let reply: string;
  try {
    const sent = await transport.sendMail({
      from,
      to: { name: mail.toName, address: mail.toAddress },
      ...(mail.replyTo === null || mail.replyTo === from.address ? {} : { replyTo: mail.replyTo }),
      subject: mail.subject,
      text: mail.text,
      messageId: mail.messageId,
      attachments,
      xMailer: false,
      signal: AbortSignal.timeout(ATTEMPT_MS),
    });
    reply = printable(sent.response);
  } catch (error) {
    return noteFailure(database, mail, deliveryFailure(error, mail.toAddress));
  }
  await noteSent(database, mail, { from: from.address, reply });
}
