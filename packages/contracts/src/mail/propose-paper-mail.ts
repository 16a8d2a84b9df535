import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleMail, exampleMailSummary, mailSummarySchema } from './mail.ts';

/** A mail with a stored paper attached, as it is proposed, and the mails it went out with before. */
export const paperMailSchema = z
  .strictObject({
    /** The client; the address is null where none is known. */
    to: z.strictObject({ name: z.string(), address: z.string().nullable() }),
    subject: z.string(),
    text: z.string(),
    /** The newest first. */
    mails: z.array(mailSummarySchema),
  })
  .meta({ id: 'PaperMail' });

export const proposePaperMail = defineContract({
  name: 'propose-paper-mail',
  method: 'GET',
  path: '/api/documents/:id/mail',
  summary: 'Propose a mail with a stored paper',
  description:
    'For an invoice, credit note, receipt or delivery note: to whom, what it says, and the mails the paper was attached to before. Nothing is sent.',
  tag: 'mail',
  roles: RECORD_KEEPERS,
  params: recordParams,
  answer: paperMailSchema,
  example: {
    params: { id: '0193f6a0-7c11-7000-8000-000000000009' },
    answer: {
      to: exampleMail.to,
      subject: 'Delivery note DN-2026-0001: Two benches for the hall',
      text: 'Greta Lindqvist (invented),\n\nattached is our delivery note DN-2026-0001.\n',
      mails: [exampleMailSummary],
    },
  },
});
