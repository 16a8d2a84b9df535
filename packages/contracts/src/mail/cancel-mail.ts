import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleMail, mailSchema } from './mail.ts';

export const cancelMail = defineContract({
  name: 'cancel-mail',
  method: 'POST',
  path: '/api/mails/:id/cancel',
  summary: 'Keep a mail from going out',
  description:
    'While it waits or has failed. It stays to be read, and can still be sent by sending it again.',
  tag: 'mail',
  roles: RECORD_KEEPERS,
  params: recordParams,
  answer: mailSchema,
  example: {
    params: { id: exampleMail.id },
    answer: { ...exampleMail, state: 'cancelled', sentAt: null, sentFrom: null, serverReply: null },
  },
});
