import { type AnswerOf, type BodyOf, solveCostSheet } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type SheetSolution = AnswerOf<typeof solveCostSheet>;

/** Asked for anew on each visit, since prices and rates move. */
export function solutionQuery(id: string, body: BodyOf<typeof solveCostSheet>) {
  return queryOptions({
    queryKey: ['cost-sheets', 'worked', id, 'solution', body],
    queryFn: async ({ signal }) => (await callApi(solveCostSheet, { params: { id }, body, signal })).value,
    staleTime: 0,
    retry: false,
  });
}
