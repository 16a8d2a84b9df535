import { workOutCostSheet } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** The figures of one sheet with every derivation; asked for anew on each visit, since prices and rates move. */
export function workedCostSheetQuery(id: string) {
  return queryOptions({
    queryKey: ['cost-sheets', 'worked', id],
    queryFn: async ({ signal }) =>
      (await callApi(workOutCostSheet, { params: { id }, query: { working: 'true' }, signal })).value,
    staleTime: 0,
  });
}
