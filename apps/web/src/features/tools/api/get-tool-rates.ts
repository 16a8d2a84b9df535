import { type AnswerOf, getToolRates } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type ToolRates = AnswerOf<typeof getToolRates>;

/** What an hour costs on all bases, the book basis for the year named; rates move with the workshop's settings. */
export function toolRatesQuery(id: string, year: number) {
  return queryOptions({
    queryKey: ['tools', 'rates', id, year],
    queryFn: async ({ signal }) =>
      (await callApi(getToolRates, { params: { id }, query: { working: 'true', year }, signal })).value,
    staleTime: 0,
  });
}
