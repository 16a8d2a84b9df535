import { type AnswerOf, listDeliveryNotes } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type Deliveries = AnswerOf<typeof listDeliveryNotes>;
export type DeliveryNote = Deliveries['notes'][number];
export type OrderedLine = Deliveries['lines'][number];

/** The delivery notes of a quote, and what of each line is still to be handed over. */
export function deliveriesQuery(quoteId: string) {
  return queryOptions({
    queryKey: ['delivery-notes', 'of-quote', quoteId],
    queryFn: async ({ signal }) =>
      (await callApi(listDeliveryNotes, { params: { id: quoteId }, signal })).value,
  });
}
