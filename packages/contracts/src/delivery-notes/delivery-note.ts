import type { DeliveryDocument } from '@scantling/quoting';
import { z } from 'zod';
import { currencySchema } from '../figures.ts';
import { exampleInvoiceDocument } from '../invoices/example-invoice.ts';
import { amountText, billedClientSchema } from '../invoices/invoice.ts';
import { documentWorkshopSchema } from '../quotes/client-document.ts';
import { partId } from '../quotes/quote-terms.ts';
import { calendarDate, moment, recordId } from '../record.ts';

const lineFields = {
  revisionId: recordId,
  lineId: partId,
  description: z.string(),
  unit: z.string(),
  ordered: amountText,
  outstanding: amountText,
};

export const deliveryDocumentSchema: z.ZodType<DeliveryDocument, DeliveryDocument> = z
  .strictObject({
    number: z.string(),
    deliveredOn: calendarDate,
    workshop: documentWorkshopSchema,
    client: billedClientSchema,
    quoteNumber: z.string(),
    orderNumber: z.string(),
    title: z.string(),
    note: z.string(),
    currency: currencySchema,
    lines: z.array(z.strictObject({ ...lineFields, quantity: amountText })),
  })
  .meta({ id: 'DeliveryDocument' });

export const deliveryNoteSchema = z
  .strictObject({
    id: recordId,
    quoteId: recordId,
    number: z.string(),
    deliveredOn: calendarDate,
    document: deliveryDocumentSchema,
    /** The stored PDF: get-document reads it. */
    paperId: recordId,
    isDemo: z.boolean(),
    createdAt: moment,
  })
  .meta({ id: 'DeliveryNote' });

/** A line that was ordered, and how much of it is still to be handed over. */
export const outstandingLineSchema = z
  .strictObject({ ...lineFields, delivered: amountText })
  .meta({ id: 'OutstandingLine' });

const line = {
  revisionId: '0193f6a0-7c11-7000-8000-000000000031',
  lineId: 'bench',
  description: 'Hall bench in oak',
  unit: 'piece',
  ordered: '2',
  outstanding: '1',
};
export const exampleOutstanding: z.input<typeof outstandingLineSchema> = { ...line, delivered: '1' };
const { workshop, client, quoteNumber, orderNumber, title, note, currency } = exampleInvoiceDocument;

export const exampleDeliveryNote: z.input<typeof deliveryNoteSchema> = {
  id: '0193f6a0-7c11-7000-8000-000000000070',
  quoteId: '0193f6a0-7c11-7000-8000-000000000030',
  number: 'DN-2026-0001',
  deliveredOn: '2026-06-12',
  document: {
    number: 'DN-2026-0001',
    deliveredOn: '2026-06-12',
    workshop,
    client,
    quoteNumber,
    orderNumber,
    title,
    note,
    currency,
    lines: [{ ...line, quantity: '1' }],
  },
  paperId: '0193f6a0-7c11-7000-8000-000000000071',
  isDemo: false,
  createdAt: '2026-06-12T09:30:00.000Z',
};
