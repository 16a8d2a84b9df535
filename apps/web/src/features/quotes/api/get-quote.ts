import { type AnswerOf, getQuote, getQuoteRevision } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type Quote = AnswerOf<typeof getQuote>;
export type Revision = AnswerOf<typeof getQuoteRevision>;

export function quoteQuery(id: string) {
  return queryOptions({
    queryKey: ['quotes', 'one', id],
    queryFn: async ({ signal }) => (await callApi(getQuote, { params: { id }, signal })).value,
  });
}

export function revisionQuery(id: string) {
  return queryOptions({
    queryKey: ['quotes', 'revision', id],
    queryFn: ({ signal }) => callApi(getQuoteRevision, { params: { id }, signal }),
  });
}
