import { z } from 'zod';
import { moment, recordId } from '../record.ts';

/** waiting: goes out when its time comes; failed: no more attempts by itself. */
export const MAIL_STATES = ['waiting', 'sending', 'sent', 'failed', 'cancelled'] as const;
export const mailStateSchema = z.enum(MAIL_STATES);
export type MailState = (typeof MAIL_STATES)[number];

const mailboxSchema = z.strictObject({ name: z.string(), address: z.string() });

export const mailAttachmentSchema = z
  .strictObject({
    documentId: recordId,
    fileName: z.string(),
    mediaType: z.string(),
    /** Bytes. */
    size: z.number().int(),
  })
  .meta({ id: 'MailAttachment' });

/** A mail as a list shows it. */
export const mailSummarySchema = z
  .strictObject({
    id: recordId,
    to: mailboxSchema,
    subject: z.string(),
    state: mailStateSchema,
    attempts: z.number().int(),
    /** Why the last attempt did not succeed, in words. */
    lastError: z.string().nullable(),
    /** When it is tried next; null where it is not waiting. */
    nextAttemptAt: moment.nullable(),
    sentAt: moment.nullable(),
    /** The record it belongs to. */
    about: z.strictObject({ kind: z.string(), id: z.string() }),
    /** The mail it is another copy of. */
    copyOf: recordId.nullable(),
    /** Mail of the demo is never sent. */
    isDemo: z.boolean(),
    createdAt: moment,
    version: z.number().int(),
  })
  .meta({ id: 'MailSummary' });
export type MailSummary = z.output<typeof mailSummarySchema>;

export const mailSchema = mailSummarySchema
  .extend({
    replyTo: z.string().nullable(),
    text: z.string(),
    attachments: z.array(mailAttachmentSchema),
    messageId: z.string(),
    sentFrom: z.string().nullable(),
    serverReply: z.string().nullable(),
  })
  .meta({ id: 'Mail' });
export type Mail = z.output<typeof mailSchema>;

export const exampleMailSummary: MailSummary = {
  id: '0193f6a0-7c11-7000-8000-000000000021',
  to: { name: 'Greta Lindqvist (invented)', address: 'greta@client.example' },
  subject: 'Quote Q-2026-0007',
  state: 'sent',
  attempts: 1,
  lastError: null,
  nextAttemptAt: null,
  sentAt: '2026-03-01T09:30:05.000Z',
  about: { kind: 'quote', id: '0193f6a0-7c11-7000-8000-000000000022' },
  copyOf: null,
  isDemo: false,
  createdAt: '2026-03-01T09:30:00.000Z',
  version: 3,
};

export const exampleMail: Mail = {
  ...exampleMailSummary,
  replyTo: 'office@workshop.example',
  text: 'Dear Greta,\n\nhere is the quote for your hall bench.\n',
  attachments: [
    {
      documentId: '0193f6a0-7c11-7000-8000-000000000009',
      fileName: 'Quote Q-2026-0007.pdf',
      mediaType: 'application/pdf',
      size: 48_213,
    },
  ],
  messageId: '<2f1c0a3e-8a57-4a52-9d6c-9b1d0c1f7a11@workshop.example>',
  sentFrom: 'office@workshop.example',
  serverReply: '250 OK',
};
