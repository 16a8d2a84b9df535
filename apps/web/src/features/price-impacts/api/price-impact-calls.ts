import {
  type AnswerOf,
  type BodyOf,
  decidePriceImpact,
  getPriceImpact,
  listPriceImpactRows,
  listPriceImpacts,
  workOutPriceImpact,
} from '@scantling/contracts';
import { infiniteQueryOptions, queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi, newIdempotencyKey } from '../../../lib/api-client.ts';

export type PriceImpact = AnswerOf<typeof getPriceImpact>;
export type PriceImpactRow = AnswerOf<typeof listPriceImpactRows>['items'][number];
export type PriceImpactDecision = BodyOf<typeof decidePriceImpact>;

const LOOK_EVERY_MS = 1000;
const ROWS_A_PAGE = 50;

export function isUnderWay({ status }: Pick<PriceImpact, 'status'>): boolean {
  return status === 'waiting' || status === 'working';
}

/** How the impact of a list stands; asked again while it is worked out. */
export function priceImpactQuery(listId: string) {
  return queryOptions({
    queryKey: ['price-impacts', 'one', listId],
    queryFn: async ({ signal }) => (await callApi(getPriceImpact, { params: { id: listId }, signal })).value,
    refetchInterval: ({ state }) => (state.data && isUnderWay(state.data) ? LOOK_EVERY_MS : false),
    staleTime: 0,
  });
}

/** What a list touches, page after page; `worked` makes it anew once a run is done. */
export function priceImpactRowsQuery(listId: string) {
  return infiniteQueryOptions({
    queryKey: ['price-impacts', 'rows', listId],
    queryFn: async ({ pageParam, signal }) =>
      (
        await callApi(listPriceImpactRows, {
          params: { id: listId },
          query: { limit: ROWS_A_PAGE, ...(pageParam === null ? {} : { cursor: pageParam }) },
          signal,
        })
      ).value,
    initialPageParam: null as string | null,
    getNextPageParam: ({ next }) => next,
    staleTime: 0,
  });
}

/** The lists whose impact waits for a decision, the newest first. */
export const undecidedImpactsQuery = queryOptions({
  queryKey: ['price-impacts', 'undecided'],
  queryFn: async ({ signal }) => (await callApi(listPriceImpacts, { query: { limit: 5 }, signal })).value,
  staleTime: 0,
});

export function useWorkOutPriceImpact(listId: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () => callApi(workOutPriceImpact, { params: { id: listId } }),
    onSuccess: () => client.invalidateQueries({ queryKey: ['price-impacts'] }),
  });
}

/** Decides on one row; a new revision changes the quotes too. */
export function useDecidePriceImpact(rowId: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: async (body: PriceImpactDecision) =>
      (
        await callApi(decidePriceImpact, {
          params: { id: rowId },
          body,
          idempotencyKey: newIdempotencyKey(),
        })
      ).value,
    onSuccess: () =>
      Promise.all(['price-impacts', 'quotes'].map((term) => client.invalidateQueries({ queryKey: [term] }))),
  });
}
