import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MONEY_KEEPERS } from '../roles.ts';
import { exampleInvoice } from './example-invoice.ts';
import { invoiceSchema } from './invoice.ts';

export const remind = defineContract({
  name: 'remind',
  method: 'POST',
  path: '/api/invoices/:id/reminders',
  summary: 'Remind the client of an overdue invoice',
  description:
    'By mail with the invoice attached, at most once a day; a second time that day changes nothing.',
  tag: 'invoices',
  roles: MONEY_KEEPERS,
  params: recordParams,
  body: z.strictObject({
    /** The proposed text where nothing is said. */
    text: z.string().trim().min(1).max(10_000).optional(),
  }),
  answer: invoiceSchema,
  status: 201,
  example: { params: { id: exampleInvoice.id }, body: {}, answer: exampleInvoice },
});
