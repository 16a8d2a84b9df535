import { getDesignRevision } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** A revision of a design, which never changes. */
export function designRevisionQuery(id: string, number: number) {
  return queryOptions({
    queryKey: ['designs', 'revision', id, number],
    queryFn: async ({ signal }) =>
      (await callApi(getDesignRevision, { params: { id, number: String(number) }, signal })).value,
    staleTime: Number.POSITIVE_INFINITY,
  });
}
