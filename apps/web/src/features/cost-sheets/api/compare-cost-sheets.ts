import { compareCostSheets, type QueryOf } from '@scantling/contracts';
import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** With what a sheet is compared, as the address carries it. */
export type Comparison = Omit<QueryOf<typeof compareCostSheets>, 'working'>;

/** Asked for anew on each visit, since prices and rates move. */
export function comparisonQuery(id: string, other: Comparison) {
  return queryOptions({
    queryKey: ['cost-sheets', 'worked', id, 'comparison', other],
    queryFn: async ({ signal }) =>
      (
        await callApi(compareCostSheets, {
          params: { id },
          query: { ...other, working: 'true' },
          signal,
        })
      ).value,
    placeholderData: keepPreviousData,
    staleTime: 0,
    retry: false,
  });
}
