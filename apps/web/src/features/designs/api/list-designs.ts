import { type AnswerOf, listDesigns } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export type DesignSummary = AnswerOf<typeof listDesigns>['items'][number];

export const designsQuery = queryOptions({
  queryKey: ['designs', 'list'],
  queryFn: ({ signal }) => everyItem(listDesigns, {}, signal),
});
