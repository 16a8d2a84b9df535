import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { calendarDate } from '../record.ts';
import { exampleInvoiceSummary } from './example-invoice.ts';
import { invoiceSummarySchema } from './invoice.ts';

export const listOverdue = defineContract({
  name: 'list-overdue',
  method: 'GET',
  path: '/api/overdue-invoices',
  summary: 'List what is overdue, with reminders ready to send',
  description: 'Longest overdue first. The text is a proposal: it can be changed before it is sent.',
  tag: 'invoices',
  roles: 'anyone',
  query: pageQuery,
  answer: pageOf(
    z.strictObject({
      invoice: invoiceSummarySchema,
      /** Null where the client has no address. */
      mailTo: z.string().nullable(),
      remindersSent: z.number().int(),
      lastRemindedOn: calendarDate.nullable(),
      subject: z.string(),
      text: z.string(),
    }),
  ),
  example: {
    query: {},
    answer: {
      items: [
        {
          invoice: { ...exampleInvoiceSummary, state: 'overdue', daysOverdue: 9 },
          mailTo: 'greta@client.example',
          remindersSent: 0,
          lastRemindedOn: null,
          subject: 'Invoice INV-2026-0003 is still open',
          text: 'Greta Lindqvist (invented),\n\n690.00 EUR of our invoice INV-2026-0003 are still open.',
        },
      ],
      next: null,
    },
  },
});
