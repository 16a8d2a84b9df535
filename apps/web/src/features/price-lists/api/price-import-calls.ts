import {
  type AnswerOf,
  applyPriceImport,
  type BodyOf,
  discardPriceImport,
  getPriceImport,
  listPriceImportRows,
  listPriceImports,
  mapPriceImport,
  pastePriceImport,
  startPriceImport,
} from '@scantling/contracts';
import type { PriceChange } from '@scantling/costing';
import { infiniteQueryOptions, queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { type CallableRoute, callApi } from '../../../lib/api-client.ts';
import { type Draft, everyItem } from '../../../lib/record-calls.ts';

export type PriceImport = AnswerOf<typeof getPriceImport>;
export type PriceImportRow = AnswerOf<typeof listPriceImportRows>['items'][number];
export type PriceMapping = BodyOf<typeof mapPriceImport>;
/** What a list says of itself. */
export type ListTerms = Omit<Draft<BodyOf<typeof pastePriceImport>>, 'text'>;

const POLL_MS = 600;
const ROWS_PER_PAGE = 200;
const ENDED_PER_PAGE = 20;

/** The server is at work on it: it changes without anybody doing anything. */
export function isUnderway({ phase }: PriceImport): boolean {
  return phase !== null;
}

/** An import; asked for again while it is read. */
export const priceImportQuery = (id: string) =>
  queryOptions({
    queryKey: ['price-lists', 'import', id],
    queryFn: async ({ signal }) => (await callApi(getPriceImport, { params: { id }, signal })).value,
    refetchInterval: ({ state }) => (state.data && isUnderway(state.data) ? POLL_MS : false),
  });

/** Imports still to be decided, newest first; asked for again while one of them is read. */
export const openImportsQuery = (supplierId?: string) =>
  queryOptions({
    queryKey: ['price-lists', 'imports', 'open', supplierId ?? ''],
    queryFn: ({ signal }) =>
      everyItem<PriceImport>(listPriceImports, { query: { supplierId, state: 'open' } }, signal),
    refetchInterval: ({ state }) => (state.data?.some(isUnderway) ? POLL_MS : false),
  });

/** Imports that came to their end, newest first, page by page. */
export const endedImportsQuery = (supplierId?: string) =>
  infiniteQueryOptions({
    queryKey: ['price-lists', 'imports', 'ended', supplierId ?? ''],
    queryFn: async ({ signal, pageParam }) =>
      (
        await callApi(listPriceImports, {
          query: {
            state: 'ended',
            limit: ENDED_PER_PAGE,
            ...(supplierId === undefined ? {} : { supplierId }),
            ...(pageParam === '' ? {} : { cursor: pageParam }),
          },
          signal,
        })
      ).value,
    initialPageParam: '',
    getNextPageParam: ({ next }) => next ?? undefined,
  });

/** Rows of one kind, page by page: a list may have 50,000. */
export const priceImportRowsQuery = (id: string, change: PriceChange) =>
  infiniteQueryOptions({
    queryKey: ['price-lists', 'import-rows', id, change],
    queryFn: async ({ signal, pageParam }) =>
      (
        await callApi(listPriceImportRows, {
          params: { id },
          query: { change, limit: ROWS_PER_PAGE, ...(pageParam === '' ? {} : { cursor: pageParam }) },
          signal,
        })
      ).value,
    initialPageParam: '',
    getNextPageParam: ({ next }) => next ?? undefined,
  });

// The terms go as they stand in the form; the server names what is wrong with them.
type Sent = CallableRoute & Pick<typeof startPriceImport, 'answer'>;

/** A file goes as multipart/form-data, its terms in the address; pasted text goes as JSON. */
export function useStartPriceImport() {
  return useMutation({
    mutationFn: async ({ terms, from }: { terms: ListTerms; from: File | string }): Promise<PriceImport> => {
      if (typeof from === 'string') {
        return (await callApi<Sent>(pastePriceImport, { body: { ...terms, text: from } })).value;
      }
      const body = new FormData();
      body.set('file', from);
      return (await callApi<Sent>(startPriceImport, { query: terms, body })).value;
    },
  });
}

function useImportChange<Variables>(id: string, act: (variables: Variables) => Promise<PriceImport>) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: act,
    onSuccess: (now) => {
      client.setQueryData(priceImportQuery(id).queryKey, now);
      return client.invalidateQueries({ queryKey: ['price-lists'] });
    },
  });
}

export const useMapPriceImport = (id: string) =>
  useImportChange(
    id,
    async (body: PriceMapping) => (await callApi(mapPriceImport, { params: { id }, body })).value,
  );

export const useApplyPriceImport = (id: string) =>
  useImportChange(
    id,
    async (leaveOutUnreadable: boolean) =>
      (await callApi(applyPriceImport, { params: { id }, body: { leaveOutUnreadable } })).value,
  );

export const useDiscardPriceImport = (id: string) =>
  useImportChange(id, async () => (await callApi(discardPriceImport, { params: { id } })).value);
