import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import {
  deliveryNoteSchema,
  exampleDeliveryNote,
  exampleOutstanding,
  outstandingLineSchema,
} from './delivery-note.ts';

export const listDeliveryNotes = defineContract({
  name: 'list-delivery-notes',
  method: 'GET',
  path: '/api/quotes/:id/delivery-notes',
  summary: 'List the delivery notes of a quote',
  description: 'Newest first, with what was ordered line by line and what is still to be handed over.',
  tag: 'delivery-notes',
  roles: 'anyone',
  params: recordParams,
  answer: z.strictObject({
    quote: z.strictObject({ number: z.string().nullable(), title: z.string(), clientName: z.string() }),
    notes: z.array(deliveryNoteSchema),
    lines: z.array(outstandingLineSchema),
  }),
  example: {
    params: { id: exampleDeliveryNote.quoteId },
    answer: {
      quote: {
        number: exampleDeliveryNote.document.quoteNumber,
        title: exampleDeliveryNote.document.title,
        clientName: exampleDeliveryNote.document.client.name,
      },
      notes: [exampleDeliveryNote],
      lines: [exampleOutstanding],
    },
  },
});
