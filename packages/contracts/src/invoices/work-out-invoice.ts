import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { figureTableSchema } from '../figures.ts';
import { exampleQuote } from '../quotes/quote.ts';
import { recordParams } from '../record.ts';
import { MONEY_KEEPERS } from '../roles.ts';
import { exampleInvoiceDocument, exampleTotals, exampleTotalsFigures } from './example-invoice.ts';
import { invoiceDocumentSchema } from './invoice.ts';
import { invoiceWantedSchema } from './invoice-wanted.ts';
import { rowTotalsSchema, taxedTotalsSchema } from './worked-invoice.ts';

export const workOutInvoice = defineContract({
  name: 'work-out-invoice',
  method: 'POST',
  path: '/api/quotes/:id/invoice-preview',
  summary: 'Work out an invoice without issuing it',
  description:
    'What the invoice would say, with its figures; nothing is kept and no number is given. Whether tax falls due with a deposit differs by country: ask the accountant.',
  tag: 'invoices',
  roles: MONEY_KEEPERS,
  params: recordParams,
  body: invoiceWantedSchema,
  answer: z.strictObject({
    /** As it would be issued today; its number is empty. */
    document: invoiceDocumentSchema,
    contract: taxedTotalsSchema,
    invoicedBefore: rowTotalsSchema,
    left: rowTotalsSchema,
    own: taxedTotalsSchema,
    figures: figureTableSchema,
  }),
  example: {
    params: { id: exampleQuote.id },
    body: { kind: 'part', of: { kind: 'share', share: '0.25' } },
    answer: {
      document: { ...exampleInvoiceDocument, number: '' },
      contract: { ...exampleTotals('contract'), taxes: [] },
      invoicedBefore: exampleTotals('before'),
      left: exampleTotals('left'),
      own: { ...exampleTotals('own'), taxes: [] },
      figures: {
        ...exampleTotalsFigures('contract', '4000', '760', '4760'),
        ...exampleTotalsFigures('before', '0', '0', '0'),
        ...exampleTotalsFigures('left', '4000', '760', '4760'),
        ...exampleTotalsFigures('own', '1000', '190', '1190'),
      },
    },
  },
});
