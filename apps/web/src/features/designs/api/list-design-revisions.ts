import { type AnswerOf, listDesignRevisions } from '@scantling/contracts';
import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export type DesignRevisionSummary = AnswerOf<typeof listDesignRevisions>['items'][number];

/** Up to the newest; a revision never changes, so that a list holds until there is a newer one. */
export function designRevisionsQuery(id: string, newest: number) {
  return queryOptions({
    queryKey: ['designs', 'revisions', id, newest],
    queryFn: ({ signal }) => everyItem(listDesignRevisions, { params: { id } }, signal),
    staleTime: Number.POSITIVE_INFINITY,
    placeholderData: keepPreviousData,
  });
}
