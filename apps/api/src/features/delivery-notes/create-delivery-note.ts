import { createDeliveryNote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { PAPER_TIME } from '../invoices/paper-time.ts';
import { toDeliveryNote } from './delivery-records.ts';
import { writeDeliveryNote } from './write-delivery-note.ts';

export const answerCreateDeliveryNote = handle(
  createDeliveryNote,
  ({ params: { id }, body, actor, services }) =>
    services.database.$transaction(async (transaction) => {
      const given = { quoteId: id, body, createdBy: actorKey(actor) };
      return toDeliveryNote(await writeDeliveryNote(transaction, services, given));
    }, PAPER_TIME),
);
