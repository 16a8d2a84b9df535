import { type BilledClient, INVOICE_KINDS, type InvoiceDocument } from '@scantling/quoting';
import { z } from 'zod';
import { currencySchema, figureId, figureTableSchema } from '../figures.ts';
import { documentWorkshopSchema } from '../quotes/client-document.ts';
import { partId, priceModeSchema, quoteKindSchema } from '../quotes/quote-terms.ts';
import { calendarDate, moment, recordId } from '../record.ts';
import { issuedWorkingSchema } from './worked-invoice.ts';

export const amountText = z.string().meta({ description: 'A decimal number as text', examples: ['1249.9'] });

export const INVOICE_STATES = ['open', 'part-paid', 'paid', 'overdue', 'credited'] as const;
export const invoiceStateSchema = z.enum(INVOICE_STATES);
export const invoiceKindSchema = z.enum(INVOICE_KINDS);

export const billedClientSchema: z.ZodType<BilledClient, BilledClient> = z.strictObject({
  name: z.string(),
  addressLines: z.array(z.string()),
  taxNumber: z.string(),
});

export const taxRowSchema = z
  .strictObject({
    category: z.string(),
    rate: amountText,
    name: z.string(),
    exemptionReason: z.string(),
    net: amountText,
    taxAmount: amountText,
  })
  .meta({ id: 'TaxRow' });

const totals = { net: amountText, tax: amountText, total: amountText };

/** What an invoice or credit note says, whole and frozen. */
export const invoiceDocumentSchema: z.ZodType<InvoiceDocument, InvoiceDocument> = z
  .strictObject({
    kind: invoiceKindSchema,
    number: z.string(),
    issuedOn: calendarDate,
    suppliedOn: calendarDate.nullable(),
    dueOn: calendarDate,
    workshop: documentWorkshopSchema,
    client: billedClientSchema,
    orderNumber: z.string(),
    quoteNumber: z.string(),
    title: z.string(),
    what: z.string(),
    note: z.string(),
    currency: currencySchema,
    groups: z.array(
      z.strictObject({
        number: z.string(),
        kind: quoteKindSchema,
        priceMode: priceModeSchema,
        lines: z.array(
          z.strictObject({
            id: partId,
            kind: z.enum(['cost-sheet', 'free', 'delivery']),
            description: z.string(),
            details: z.string(),
            quantity: amountText,
            unit: z.string(),
            price: amountText,
            priceBase: amountText,
            amount: amountText,
          }),
        ),
        sumOfLines: amountText,
        discount: amountText,
      }),
    ),
    contract: z.strictObject({ taxes: z.array(taxRowSchema), ...totals }).nullable(),
    deducted: z.array(
      z.strictObject({ number: z.string(), kind: invoiceKindSchema, issuedOn: calendarDate, ...totals }),
    ),
    taxes: z.array(taxRowSchema),
    ...totals,
    credits: z.strictObject({ number: z.string(), issuedOn: calendarDate }).nullable(),
  })
  .meta({ id: 'InvoiceDocument' });

export const balanceSchema = z
  .strictObject({
    invoiced: figureId,
    credited: figureId,
    paid: figureId,
    /** invoiced - credited - paid; below 0 where too much was paid. */
    owed: figureId,
    /** What was paid too much; 0 where nothing was. */
    overpaid: figureId,
  })
  .meta({ id: 'InvoiceBalance' });

const summaryFields = {
  id: recordId,
  kind: invoiceKindSchema,
  number: z.string(),
  /** As of today; null for a credit note. */
  state: invoiceStateSchema.nullable(),
  quoteId: recordId,
  quoteNumber: z.string(),
  title: z.string(),
  clientId: recordId,
  clientName: z.string(),
  issuedOn: calendarDate,
  dueOn: calendarDate,
  daysOverdue: z.number().int(),
  currency: currencySchema,
  /** With tax; of a credit note what it gives back. */
  total: amountText,
  credited: amountText,
  paid: amountText,
  owed: amountText,
  /** The invoice a credit note takes back from. */
  creditsId: recordId.nullable(),
  /** The stored PDF: get-document reads it. */
  paperId: recordId,
  isDemo: z.boolean(),
};
export const invoiceSummarySchema = z.strictObject(summaryFields).meta({ id: 'InvoiceSummary' });

export const paymentSchema = z
  .strictObject({
    id: recordId,
    /** Below 0 on a reversal. */
    amount: amountText,
    receivedOn: calendarDate,
    method: z.string(),
    reference: z.string(),
    reversesId: recordId.nullable(),
    /** The entry that took it back. */
    reversedById: recordId.nullable(),
    reason: z.string(),
    receiptNumber: z.string().nullable(),
    receiptPaperId: recordId.nullable(),
    createdAt: moment,
  })
  .meta({ id: 'Payment' });

export const reminderSchema = z
  .strictObject({ id: recordId, sentOn: calendarDate, mailedTo: z.string(), text: z.string() })
  .meta({ id: 'Reminder' });

export const invoiceSchema = z
  .strictObject({
    ...summaryFields,
    document: invoiceDocumentSchema,
    documentHash: z.string(),
    payments: z.array(paymentSchema),
    creditNotes: z.array(
      z.strictObject({ id: recordId, number: z.string(), issuedOn: calendarDate, total: amountText }),
    ),
    reminders: z.array(reminderSchema),
    balance: balanceSchema,
    /** Of the balance. */
    figures: figureTableSchema,
    working: issuedWorkingSchema,
  })
  .meta({ id: 'Invoice' });
export type InvoiceAnswer = z.output<typeof invoiceSchema>;
