import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleInvoice } from './example-invoice.ts';
import { invoiceSchema } from './invoice.ts';

export const getInvoice = defineContract({
  name: 'get-invoice',
  method: 'GET',
  path: '/api/invoices/:id',
  summary: 'Read an invoice or credit note',
  description: 'As it was issued, with payments, credit notes, reminders and what is owed on it.',
  tag: 'invoices',
  roles: 'anyone',
  params: recordParams,
  answer: invoiceSchema,
  example: { params: { id: exampleInvoice.id }, answer: exampleInvoice },
});
