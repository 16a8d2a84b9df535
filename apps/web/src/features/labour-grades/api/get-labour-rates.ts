import { type AnswerOf, getLabourRates } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type LabourRates = AnswerOf<typeof getLabourRates>;

/** What an hour of each grade costs. */
export const labourRatesQuery = queryOptions({
  queryKey: ['labour-grades', 'rates'],
  queryFn: async ({ signal }) =>
    (await callApi(getLabourRates, { query: { working: 'true' }, signal })).value,
  staleTime: 0,
});
