import { type AnswerOf, getDesignRevision } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type DesignRevision = AnswerOf<typeof getDesignRevision>;

/** A revision of a design, which never changes. */
export function designRevisionQuery(id: string, number: number) {
  return queryOptions({
    queryKey: ['designs', 'revision', id, number],
    queryFn: async ({ signal }) =>
      (await callApi(getDesignRevision, { params: { id, number: String(number) }, signal })).value,
    staleTime: Number.POSITIVE_INFINITY,
  });
}
