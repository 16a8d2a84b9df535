import { workOutCostSheet } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import { missingIn } from '../components/missing-prices.ts';

/** What one sheet leaves out because nothing prices it, by code; lists ask it of every sheet they show. */
export function missingPricesQuery(id: string) {
  return queryOptions({
    queryKey: ['cost-sheets', 'missing-prices', id],
    queryFn: async ({ signal }) => {
      const { value } = await callApi(workOutCostSheet, {
        params: { id },
        query: { working: 'false' },
        signal,
      });
      return missingIn(value);
    },
    staleTime: 60_000,
    retry: false,
  });
}

/** The figures of one sheet with every derivation; asked for anew on each visit, since prices and rates move. */
export function workedCostSheetQuery(id: string) {
  return queryOptions({
    queryKey: ['cost-sheets', 'worked', id],
    queryFn: async ({ signal }) =>
      (await callApi(workOutCostSheet, { params: { id }, query: { working: 'true' }, signal })).value,
    staleTime: 0,
  });
}
