import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleMailSummary, mailStateSchema, mailSummarySchema } from './mail.ts';

export const listMails = defineContract({
  name: 'list-mails',
  method: 'GET',
  path: '/api/mails',
  summary: 'List the mails',
  description: 'The newest first; all, those in one state, or those about one record.',
  tag: 'mail',
  roles: RECORD_KEEPERS,
  query: pageQuery.extend({
    state: mailStateSchema.optional(),
    aboutKind: z.string().max(40).optional(),
    aboutId: z.string().max(64).optional(),
  }),
  answer: pageOf(mailSummarySchema),
  example: { query: { limit: 50 }, answer: { items: [exampleMailSummary], next: null } },
});
