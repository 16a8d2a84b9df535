import { compareDesignRevisions } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** What changed from one revision to another, neither of which changes. */
export function designChangesQuery(id: string, from: number, to: number) {
  return queryOptions({
    queryKey: ['designs', 'changes', id, from, to],
    queryFn: async ({ signal }) =>
      (await callApi(compareDesignRevisions, { params: { id }, query: { from, to }, signal })).value.changes,
    staleTime: Number.POSITIVE_INFINITY,
  });
}
