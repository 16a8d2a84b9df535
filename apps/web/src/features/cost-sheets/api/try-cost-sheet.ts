import { tryCostSheet } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import type { DesignChoice } from '../components/design-choice.ts';

/** The figures of a sheet for another choice; nothing is stored. Part of what a saved edit makes anew. */
export function triedCostSheetQuery(id: string, choice: DesignChoice) {
  return queryOptions({
    queryKey: ['cost-sheets', 'worked', id, 'tried', choice],
    queryFn: async ({ signal }) =>
      (
        await callApi(tryCostSheet, {
          params: { id },
          query: { working: 'true' },
          body: { ...choice, parameterValues: { ...choice.parameterValues } },
          signal,
        })
      ).value,
    staleTime: 0,
  });
}
