import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { currencySchema, figureId, figureTableSchema } from '../figures.ts';
import { partId } from '../quotes/quote-terms.ts';
import { calendarDate, recordId } from '../record.ts';
import {
  exampleBalance,
  exampleBalanceFigures,
  exampleInvoiceSummary,
  exampleMoney,
} from './example-invoice.ts';
import { amountText, balanceSchema, invoiceSummarySchema } from './invoice.ts';

/** What is owed in one currency. */
export const statementSchema = z
  .strictObject({
    currency: currencySchema,
    /** Original and accepted additions, with tax. */
    contract: figureId,
    ...balanceSchema.shape,
    overdue: figureId,
    /** Of the contract, still to be invoiced. */
    leftToInvoice: figureId,
    invoices: z.array(
      z.strictObject({
        invoice: invoiceSummarySchema,
        balance: balanceSchema,
        daysOverdue: z.number().int(),
      }),
    ),
    creditNotes: z.array(invoiceSummarySchema),
    /** The payments agreed in quote and additions, and the invoice that asks for each. */
    schedule: z.array(
      z.strictObject({
        quoteId: recordId,
        revisionId: recordId,
        partId,
        number: z.string(),
        label: z.string(),
        share: amountText,
        amount: amountText,
        invoiceId: recordId.nullable(),
      }),
    ),
  })
  .meta({ id: 'Statement' });

export const getStatement = defineContract({
  name: 'get-statement',
  method: 'GET',
  path: '/api/statements',
  summary: 'Show what is owed',
  description:
    'For one quote (`quoteId`) or all of a client’s (`clientId`), one statement for each currency: agreed, invoiced, credited, paid, owed and overdue as of today.',
  tag: 'invoices',
  roles: 'anyone',
  query: z.strictObject({ quoteId: recordId.optional(), clientId: recordId.optional() }),
  answer: z.strictObject({
    asOf: calendarDate,
    client: z.strictObject({ id: recordId, name: z.string() }),
    /** Where one quote was asked for. */
    quote: z.strictObject({ number: z.string().nullable(), title: z.string() }).nullable(),
    statements: z.array(statementSchema),
    figures: figureTableSchema,
  }),
  example: {
    query: { quoteId: exampleInvoiceSummary.quoteId },
    answer: {
      asOf: '2026-03-20',
      client: { id: exampleInvoiceSummary.clientId, name: exampleInvoiceSummary.clientName },
      quote: { number: exampleInvoiceSummary.quoteNumber, title: exampleInvoiceSummary.title },
      statements: [
        {
          currency: 'EUR',
          contract: 'contract',
          ...exampleBalance,
          overdue: 'overdue',
          leftToInvoice: 'left',
          invoices: [{ invoice: exampleInvoiceSummary, balance: exampleBalance, daysOverdue: 0 }],
          creditNotes: [],
          schedule: [],
        },
      ],
      figures: {
        ...exampleBalanceFigures,
        contract: exampleMoney('contract', 'agreed', '4760'),
        overdue: exampleMoney('overdue', 'overdue', '0'),
        left: exampleMoney('left', 'left to invoice', '3570'),
      },
    },
  },
});
