import { listDeliveryNotes } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { agreedParts, BILLED_QUOTE } from '../invoices/billing-records.ts';
import { outstandingLines, readDeliveries, toDeliveryNote } from './delivery-records.ts';

export const answerListDeliveryNotes = handle(
  listDeliveryNotes,
  async ({ params: { id }, services: { database } }) => {
    const quote = await database.quote.findUnique({ where: { id }, include: BILLED_QUOTE });
    if (quote === null) throw notFound('quote');
    const notes = (await readDeliveries(database, id)).map(toDeliveryNote);
    const documents = notes.map(({ document }) => document);
    const { number, title, client } = quote;
    return {
      quote: { number, title, clientName: client.name },
      notes,
      lines: outstandingLines(agreedParts(quote), documents),
    };
  },
);
