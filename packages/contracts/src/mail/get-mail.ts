import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleMail, mailSchema } from './mail.ts';

export const getMail = defineContract({
  name: 'get-mail',
  method: 'GET',
  path: '/api/mails/:id',
  summary: 'Read a mail',
  description: 'With its text; the bytes of an attachment are read as a document.',
  tag: 'mail',
  roles: RECORD_KEEPERS,
  params: recordParams,
  answer: mailSchema,
  givesEtag: true,
  example: { params: { id: exampleMail.id }, answer: exampleMail },
});
