import { listMails, type MailState } from '@scantling/contracts';
import { infiniteQueryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

const LOOK_AGAIN_MS = 10_000;

/** The newest first, page by page; those in one state, or all. */
export const mailsQuery = (state: MailState | undefined) =>
  infiniteQueryOptions({
    queryKey: ['mail', 'list', state ?? ''],
    queryFn: async ({ pageParam, signal }) => {
      const query = { limit: 100, state, ...(pageParam === null ? {} : { cursor: pageParam }) };
      return (await callApi(listMails, { query, signal })).value;
    },
    initialPageParam: null as string | null,
    getNextPageParam: ({ next }) => next,
    refetchInterval: LOOK_AGAIN_MS,
  });
