import type { Contract } from '@scantling/contracts';
import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef } from 'react';
import type { z } from 'zod';
import { type ApiAnswer, type CallableRoute, callApi, newIdempotencyKey } from './api-client.ts';

interface Page<Value> {
  readonly items: readonly Value[];
  readonly next: string | null;
}

/**
 * What a form sends: the fields of the body, each as it stands, valid or not. The server names what is wrong with it,
 * so that its rules stand in one place.
 */
export type Draft<Body> = { readonly [Field in keyof Body]: unknown };

type Answering<Value> = CallableRoute & { readonly answer: z.ZodType<Value> };

/** The five routes a kind of record has. */
export interface RecordContracts<Value> {
  readonly list: Answering<Page<Value>>;
  readonly get: Answering<Value>;
  readonly create: Answering<Value> & Pick<Contract, 'roles'>;
  readonly edit: Answering<Value> & Pick<Contract, 'roles'>;
  readonly remove: CallableRoute;
}

const MOST_PER_PAGE = 200;

/** All pages of a list, one after the other. */
export async function everyItem<Value>(
  route: Answering<Page<Value>>,
  request: { readonly params?: unknown; readonly query?: Readonly<Record<string, unknown>> },
  signal: AbortSignal,
): Promise<readonly Value[]> {
  const items: Value[] = [];
  let cursor: string | undefined;
  do {
    const { value } = await callApi<Answering<Page<Value>>>(route, {
      params: request.params,
      query: { ...request.query, limit: MOST_PER_PAGE, cursor },
      signal,
    });
    items.push(...value.items);
    cursor = value.next ?? undefined;
  } while (cursor !== undefined);
  return items;
}

/** Keeps one idempotency key while the same body is sent again, so that a lost answer creates nothing twice. */
export function useIntentKey(): (body: unknown) => string {
  const last = useRef({ text: '', key: '' });
  return (body) => {
    const text = JSON.stringify(body);
    if (last.current.text !== text) last.current = { text, key: newIdempotencyKey() };
    return last.current.key;
  };
}

/** The queries of a kind of record, and the routes its mutations go to. */
export function recordCalls<Value extends { readonly id: string }>(
  term: string,
  contracts: RecordContracts<Value>,
) {
  const listQuery = queryOptions({
    queryKey: [term, 'list'],
    queryFn: ({ signal }) => everyItem<Value>(contracts.list, {}, signal),
  });
  const recordQuery = (id: string) =>
    queryOptions({
      queryKey: [term, 'record', id],
      queryFn: ({ signal }): Promise<ApiAnswer<Value>> =>
        callApi<Answering<Value>>(contracts.get, { params: { id }, signal }),
    });
  return { term, contracts, listQuery, recordQuery };
}

export type RecordCalls<Value extends { readonly id: string }> = ReturnType<typeof recordCalls<Value>>;

/** Creates where `id` is null, changes otherwise; every change makes all answers of the term stale. */
export function useSaveRecord<Value extends { readonly id: string }>(
  { term, contracts }: RecordCalls<Value>,
  id: string | null,
) {
  const client = useQueryClient();
  const keyFor = useIntentKey();
  return useMutation({
    mutationFn: ({ body, etag }: { body: unknown; etag: string | null }): Promise<ApiAnswer<Value>> =>
      id === null
        ? callApi<Answering<Value>>(contracts.create, { body, idempotencyKey: keyFor(body) })
        : callApi<Answering<Value>>(contracts.edit, { params: { id }, body, ifMatch: etag }),
    onSuccess: () => client.invalidateQueries({ queryKey: [term] }),
  });
}

export function useRemoveRecord<Value extends { readonly id: string }>(
  { term, contracts }: RecordCalls<Value>,
  id: string,
) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (etag: string | null) => callApi(contracts.remove, { params: { id }, ifMatch: etag }),
    onSuccess: () => {
      client.removeQueries({ queryKey: [term, 'record', id] });
      return client.invalidateQueries({ queryKey: [term, 'list'] });
    },
  });
}
