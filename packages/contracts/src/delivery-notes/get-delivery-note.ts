import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { deliveryNoteSchema, exampleDeliveryNote } from './delivery-note.ts';

export const getDeliveryNote = defineContract({
  name: 'get-delivery-note',
  method: 'GET',
  path: '/api/delivery-notes/:id',
  summary: 'Read a delivery note',
  description: 'As it was handed over; its paper is read as a document.',
  tag: 'delivery-notes',
  roles: 'anyone',
  params: recordParams,
  answer: deliveryNoteSchema,
  example: { params: { id: exampleDeliveryNote.id }, answer: exampleDeliveryNote },
});
