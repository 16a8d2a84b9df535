import { type AnswerOf, type BodyOf, workOutRisk } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type SheetRisk = AnswerOf<typeof workOutRisk>;

/** Thousands of runs take seconds; leaving the screen gives the question up. */
export function riskQuery(id: string, body: BodyOf<typeof workOutRisk>) {
  return queryOptions({
    queryKey: ['cost-sheets', 'worked', id, 'risk', body],
    queryFn: async ({ signal }) => (await callApi(workOutRisk, { params: { id }, body, signal })).value,
    staleTime: 0,
    retry: false,
  });
}
