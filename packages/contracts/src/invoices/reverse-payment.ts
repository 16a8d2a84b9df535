import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MONEY_KEEPERS } from '../roles.ts';
import { exampleInvoice, examplePayment } from './example-invoice.ts';
import { invoiceSchema } from './invoice.ts';

export const reversePayment = defineContract({
  name: 'reverse-payment',
  method: 'POST',
  path: '/api/payments/:id/reversal',
  summary: 'Take back a payment that was entered',
  description: 'By an entry below 0 that names it; nothing is removed. Once for each payment.',
  tag: 'invoices',
  roles: MONEY_KEEPERS,
  params: recordParams,
  body: z.strictObject({ reason: z.string().trim().min(1).max(500) }),
  answer: invoiceSchema,
  status: 201,
  idempotent: true,
  example: {
    params: { id: examplePayment.id },
    body: { reason: 'The bank took it back.' },
    answer: exampleInvoice,
  },
});
