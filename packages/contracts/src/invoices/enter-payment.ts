import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { moneyText } from '../decimal-text.ts';
import { calendarDate, recordParams } from '../record.ts';
import { MONEY_KEEPERS } from '../roles.ts';
import { singleLine } from '../single-line.ts';
import { exampleInvoice } from './example-invoice.ts';
import { invoiceSchema } from './invoice.ts';

export const enterPayment = defineContract({
  name: 'enter-payment',
  method: 'POST',
  path: '/api/invoices/:id/payments',
  summary: 'Enter money received',
  description:
    'On one invoice, in parts where it comes in parts; what is too much is named in the balance. With `withReceipt` a receipt is numbered, stored and served as it was given.',
  tag: 'invoices',
  roles: MONEY_KEEPERS,
  params: recordParams,
  body: z.strictObject({
    amount: moneyText,
    receivedOn: calendarDate,
    /** "bank transfer", "cash". */
    method: singleLine(60).min(1),
    reference: singleLine(200).default(''),
    withReceipt: z.boolean().default(true),
  }),
  answer: invoiceSchema,
  status: 201,
  idempotent: true,
  example: {
    params: { id: exampleInvoice.id },
    body: { amount: '500', receivedOn: '2026-03-16', method: 'bank transfer' },
    answer: exampleInvoice,
  },
});
