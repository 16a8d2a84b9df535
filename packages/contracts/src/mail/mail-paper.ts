import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { singleLine } from '../single-line.ts';
import { exampleMail, mailSchema } from './mail.ts';

export const mailPaper = defineContract({
  name: 'mail-paper',
  method: 'POST',
  path: '/api/documents/:id/mails',
  summary: 'Mail a stored paper',
  description:
    'Puts a mail with the invoice, credit note, receipt or delivery note into the outbox, as it was issued; as often as wanted, each time a mail of its own. Mail of the demo is never sent.',
  tag: 'mail',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: z.strictObject({
    to: z.strictObject({ name: singleLine(200), address: z.string().max(254) }),
    subject: singleLine(200).min(1),
    text: z.string().trim().min(1).max(10_000),
  }),
  answer: mailSchema,
  status: 201,
  idempotent: true,
  example: {
    params: { id: '0193f6a0-7c11-7000-8000-000000000009' },
    body: {
      to: exampleMail.to,
      subject: 'Delivery note DN-2026-0001: Two benches for the hall',
      text: 'Attached is our delivery note.',
    },
    answer: { ...exampleMail, state: 'waiting', sentAt: null },
  },
});
