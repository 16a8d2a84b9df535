import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { lineQuantityText, MOST_LINES, partId } from '../quotes/quote-terms.ts';
import { calendarDate, recordId, recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { singleLine } from '../single-line.ts';
import { deliveryNoteSchema, exampleDeliveryNote } from './delivery-note.ts';

export const createDeliveryNote = defineContract({
  name: 'create-delivery-note',
  method: 'POST',
  path: '/api/quotes/:id/delivery-notes',
  summary: 'Write a delivery note',
  description:
    'For lines of the accepted quote and its additions, all or part of each; never more than was ordered. Numbered and stored as it is handed over.',
  tag: 'delivery-notes',
  roles: MAKERS,
  params: recordParams,
  body: z.strictObject({
    deliveredOn: calendarDate,
    orderNumber: singleLine(60).default(''),
    note: z.string().trim().max(2000).default(''),
    lines: z
      .array(z.strictObject({ revisionId: recordId, lineId: partId, quantity: lineQuantityText }))
      .min(1)
      .max(MOST_LINES),
  }),
  answer: deliveryNoteSchema,
  status: 201,
  idempotent: true,
  example: {
    params: { id: exampleDeliveryNote.quoteId },
    body: {
      deliveredOn: '2026-06-12',
      lines: [{ revisionId: '0193f6a0-7c11-7000-8000-000000000031', lineId: 'bench', quantity: '1' }],
    },
    answer: exampleDeliveryNote,
  },
});
