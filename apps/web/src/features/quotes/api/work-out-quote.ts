import {
  addressOf,
  compareQuote,
  previewQuote,
  previewQuotePaper,
  workOutQuote,
  workOutQuoteDraft,
} from '@scantling/contracts';
import type { QuoteDraft } from '@scantling/quoting';
import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** The figures of a draft as it stands on the screen, saved or not; the ones before stay until the new ones are there. */
export function draftFiguresQuery(draft: QuoteDraft, chosen: readonly string[]) {
  return queryOptions({
    queryKey: ['quotes', 'draft-figures', draft, chosen],
    queryFn: async ({ signal }) => {
      const body = { draft, chosen: [...chosen] };
      return (await callApi(workOutQuoteDraft, { body, query: { working: 'true' }, signal })).value;
    },
    placeholderData: keepPreviousData,
    retry: false,
    gcTime: 60_000,
  });
}

/** What was frozen when it was sent, or accepted. */
export function frozenFiguresQuery(id: string) {
  return queryOptions({
    queryKey: ['quotes', 'figures', id],
    queryFn: async ({ signal }) =>
      (await callApi(workOutQuote, { params: { id }, query: { working: 'true' }, signal })).value,
  });
}

/** What was sent beside today; asked for anew on each visit, since prices and rates move. */
export function comparisonQuery(id: string) {
  return queryOptions({
    queryKey: ['quotes', 'today', id],
    queryFn: async ({ signal }) =>
      (await callApi(compareQuote, { params: { id }, query: { working: 'true' }, signal })).value,
    staleTime: 60_000,
  });
}

/** What the client would get now, of the version that is saved. */
export function previewQuery(id: string, etag: string | null) {
  return queryOptions({
    queryKey: ['quotes', 'preview', id, etag],
    queryFn: async ({ signal }) => (await callApi(previewQuote, { params: { id }, signal })).value,
    staleTime: 0,
    retry: false,
  });
}

export function previewPaperAddress(id: string): string {
  return addressOf(previewQuotePaper, { params: { id } });
}
