import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';

export const mailServiceSchema = z
  .strictObject({
    /** False while no mail server is set: mails wait, and can be read. */
    canSend: z.boolean(),
    /** The address mails come from. */
    from: z.string().nullable(),
    /** Host and port of the mail server. */
    server: z.string().nullable(),
  })
  .meta({ id: 'MailService' });
export type MailService = z.output<typeof mailServiceSchema>;

export const getMailService = defineContract({
  name: 'get-mail-service',
  method: 'GET',
  path: '/api/mail-service',
  summary: 'Read how mail goes out',
  description: 'As SMTP_URL and MAIL_FROM say; without them mails wait in the outbox. No password is told.',
  tag: 'mail',
  roles: RECORD_KEEPERS,
  answer: mailServiceSchema,
  example: { answer: { canSend: true, from: 'office@workshop.example', server: 'mail.example:465' } },
});
