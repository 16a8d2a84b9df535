import { listDesignRevisions } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

/** The revisions a sheet can be pinned to, the newest first. */
export function revisionChoicesQuery(id: string, newest: number) {
  return queryOptions({
    queryKey: ['designs', 'revision-choices', id, newest],
    queryFn: async ({ signal }) => {
      const revisions = await everyItem(listDesignRevisions, { params: { id } }, signal);
      return revisions.map(({ number, createdAt, note }) => ({
        id: String(number),
        label: `Revision ${number}`,
        note: [createdAt.slice(0, 10), note].filter(Boolean).join(', '),
      }));
    },
    staleTime: Number.POSITIVE_INFINITY,
  });
}
