import { type AnswerOf, type BodyOf, workOutSensitivity } from '@scantling/contracts';
import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type Moves = AnswerOf<typeof workOutSensitivity>;

/** Asked for anew on each visit, since prices and rates move. */
export function sensitivityQuery(id: string, body: BodyOf<typeof workOutSensitivity>) {
  return queryOptions({
    queryKey: ['cost-sheets', 'worked', id, 'sensitivity', body],
    queryFn: async ({ signal }) =>
      (await callApi(workOutSensitivity, { params: { id }, body, signal })).value,
    placeholderData: keepPreviousData,
    staleTime: 0,
    retry: false,
  });
}
