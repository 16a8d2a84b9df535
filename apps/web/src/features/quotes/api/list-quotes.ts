import { type AnswerOf, listQuotes } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export type QuoteSummary = AnswerOf<typeof listQuotes>['items'][number];
export type QuoteState = QuoteSummary['state'];

/** What the list is narrowed down to; it stands in the address, so that it can be linked to. */
export interface QuoteFilter {
  readonly state?: QuoteState | undefined;
  readonly clientId?: string | undefined;
}

export function quotesQuery(filter: QuoteFilter) {
  return queryOptions({
    queryKey: ['quotes', 'list', filter],
    queryFn: ({ signal }) => everyItem(listQuotes, { query: { ...filter } }, signal),
  });
}
