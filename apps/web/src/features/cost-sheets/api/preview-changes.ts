import { type BodyOf, previewChanges } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type ChangesBody = BodyOf<typeof previewChanges>;

/** What taking values over would change; asked anew whenever it is looked at. */
export function foreseenChangesQuery(sheetId: string, body: ChangesBody) {
  return queryOptions({
    queryKey: ['cost-sheets', 'foreseen', sheetId, body],
    queryFn: async ({ signal }) =>
      (await callApi(previewChanges, { params: { id: sheetId }, body, signal })).value,
    staleTime: 0,
    gcTime: 0,
    retry: false,
  });
}
