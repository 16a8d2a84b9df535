import { type AnswerOf, getDesign } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type Design = AnswerOf<typeof getDesign>;

export function designQuery(id: string) {
  return queryOptions({
    queryKey: ['designs', 'one', id],
    queryFn: ({ signal }) => callApi(getDesign, { params: { id }, signal }),
  });
}
