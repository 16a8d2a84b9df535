import {
  type BodyOf,
  getEarlyPrice,
  type KeptEarlyPrice,
  keepEarlyPrice,
  listEarlyPrices,
} from '@scantling/contracts';
import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import { everyItem } from '../../../lib/record-calls.ts';

export type EarlyPriceBody = BodyOf<typeof keepEarlyPrice>;

export function earlyPricesQuery(id: string) {
  return queryOptions({
    queryKey: ['enquiries', 'early-prices', id],
    queryFn: ({ signal }) => everyItem<KeptEarlyPrice>(listEarlyPrices, { params: { id } }, signal),
  });
}

/** One as it was given; it never changes. */
export function earlyPriceQuery(id: string, number: number) {
  return queryOptions({
    queryKey: ['enquiries', 'early-price', id, number],
    queryFn: async ({ signal }) => (await callApi(getEarlyPrice, { params: { id, number }, signal })).value,
    staleTime: Number.POSITIVE_INFINITY,
  });
}

export function useKeepEarlyPrice(id: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ body, idempotencyKey }: { body: EarlyPriceBody; idempotencyKey: string }) =>
      callApi(keepEarlyPrice, { params: { id }, body, idempotencyKey }),
    onSuccess: () => client.invalidateQueries({ queryKey: ['enquiries'] }),
  });
}
