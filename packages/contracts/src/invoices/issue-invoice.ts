import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { exampleQuote } from '../quotes/quote.ts';
import { recordParams } from '../record.ts';
import { MONEY_KEEPERS } from '../roles.ts';
import { exampleInvoice } from './example-invoice.ts';
import { invoiceSchema } from './invoice.ts';
import { invoiceWantedSchema } from './invoice-wanted.ts';

export const issueInvoice = defineContract({
  name: 'issue-invoice',
  method: 'POST',
  path: '/api/quotes/:id/invoices',
  summary: 'Issue an invoice',
  description:
    'Number, frozen document, stored paper and mail in one act. Everything invoiced less everything credited never comes to more than what was agreed.',
  tag: 'invoices',
  roles: MONEY_KEEPERS,
  params: recordParams,
  body: z.strictObject({
    wanted: invoiceWantedSchema,
    /** Puts a mail with the paper into the outbox, where the client has an address. */
    sendMail: z.boolean().default(true),
  }),
  answer: invoiceSchema,
  status: 201,
  idempotent: true,
  example: {
    params: { id: exampleQuote.id },
    body: { wanted: { kind: 'final', suppliedOn: '2026-06-12' } },
    answer: exampleInvoice,
  },
});
