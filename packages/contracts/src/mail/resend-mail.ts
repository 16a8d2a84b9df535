import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { singleLine } from '../single-line.ts';
import { exampleMail, mailSchema } from './mail.ts';

export const resendMail = defineContract({
  name: 'resend-mail',
  method: 'POST',
  path: '/api/mails/:id/resend',
  summary: 'Send a mail again',
  description:
    'A mail that waits, failed or was cancelled is tried at once. One that was sent, or that goes to another address, is sent as a new copy, and the first stays as it is. Answers with the mail that goes out.',
  tag: 'mail',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: z.strictObject({
    /** Another address, where the first was wrong. */
    to: z.strictObject({ name: singleLine(200), address: z.string().max(254) }).exactOptional(),
  }),
  answer: mailSchema,
  idempotent: true,
  example: {
    params: { id: exampleMail.id },
    body: { to: { name: 'Greta Lindqvist (invented)', address: 'greta.l@client.example' } },
    answer: { ...exampleMail, state: 'waiting', sentAt: null },
  },
});
