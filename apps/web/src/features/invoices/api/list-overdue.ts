import { type AnswerOf, listOverdue } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

/** An overdue invoice with the reminder proposed for it. */
export type Overdue = AnswerOf<typeof listOverdue>['items'][number];

export const overdueQuery = queryOptions({
  queryKey: ['invoices', 'overdue'],
  queryFn: ({ signal }) => everyItem(listOverdue, {}, signal),
});
