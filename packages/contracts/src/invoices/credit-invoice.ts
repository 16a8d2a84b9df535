import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { moneyText } from '../decimal-text.ts';
import { recordParams } from '../record.ts';
import { MONEY_KEEPERS } from '../roles.ts';
import { exampleInvoice } from './example-invoice.ts';
import { invoiceSchema } from './invoice.ts';

export const creditInvoice = defineContract({
  name: 'credit-invoice',
  method: 'POST',
  path: '/api/invoices/:id/credit-notes',
  summary: 'Credit an invoice, whole or in part',
  description:
    'Issues a credit note with a number of its own; the invoice stays as it was issued. Never more than is left of it.',
  tag: 'invoices',
  roles: MONEY_KEEPERS,
  params: recordParams,
  body: z.strictObject({
    /** With tax; null for all that is left of the invoice. */
    amount: moneyText.nullable(),
    reason: z.string().trim().min(1).max(2000),
    sendMail: z.boolean().default(true),
  }),
  /** The credit note. */
  answer: invoiceSchema,
  status: 201,
  idempotent: true,
  example: {
    params: { id: exampleInvoice.id },
    body: { amount: '119', reason: 'One bench came without its drawer.' },
    answer: {
      ...exampleInvoice,
      kind: 'credit-note',
      number: 'CN-2026-0001',
      state: null,
      total: '119',
      owed: '0',
      paid: '0',
      creditsId: exampleInvoice.id,
    },
  },
});
