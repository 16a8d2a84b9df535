import { getDeliveryNote } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function deliveryNoteQuery(id: string) {
  return queryOptions({
    queryKey: ['delivery-notes', 'one', id],
    queryFn: async ({ signal }) => (await callApi(getDeliveryNote, { params: { id }, signal })).value,
  });
}
