import { getDeliveryNote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { toDeliveryNote } from './delivery-records.ts';

export const answerGetDeliveryNote = handle(getDeliveryNote, async ({ params: { id }, services }) => {
  const row = await services.database.deliveryNote.findUnique({ where: { id } });
  if (row === null) throw notFound('delivery note');
  return toDeliveryNote(row);
});
