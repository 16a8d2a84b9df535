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
    notes: z.array(deliveryNoteSchema),
    lines: z.array(outstandingLineSchema),
  }),
  example: {
    params: { id: exampleDeliveryNote.quoteId },
    answer: { notes: [exampleDeliveryNote], lines: [exampleOutstanding] },
  },
});
