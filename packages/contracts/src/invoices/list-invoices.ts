import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordId } from '../record.ts';
import { exampleInvoiceSummary } from './example-invoice.ts';
import { invoiceKindSchema, invoiceStateSchema, invoiceSummarySchema } from './invoice.ts';

export const listInvoices = defineContract({
  name: 'list-invoices',
  method: 'GET',
  path: '/api/invoices',
  summary: 'List invoices and credit notes',
  description:
    'Newest first. A state is as of today: open and part-paid are not due yet, overdue are past their day.',
  tag: 'invoices',
  roles: 'anyone',
  query: pageQuery.extend({
    state: invoiceStateSchema.optional(),
    kind: invoiceKindSchema.optional(),
    quoteId: recordId.optional(),
    clientId: recordId.optional(),
  }),
  answer: pageOf(invoiceSummarySchema),
  example: { query: { state: 'part-paid' }, answer: { items: [exampleInvoiceSummary], next: null } },
});
