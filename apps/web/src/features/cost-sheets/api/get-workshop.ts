import { getWorkshop } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** The terms a new cost sheet starts with, as the workshop has set them. */
export const newSheetTermsQuery = queryOptions({
  queryKey: ['workshop', 'new-cost-sheet'],
  queryFn: async ({ signal }) => (await callApi(getWorkshop, { signal })).value.settings.newCostSheet,
});
