import { getSession } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

const FIVE_MINUTES_MS = 300_000;

/** Who is signed in, and whether the workshop still has to be set up. */
export const sessionQuery = queryOptions({
  queryKey: ['sign-in', 'session'],
  queryFn: async ({ signal }) => (await callApi(getSession, { signal })).value,
  staleTime: FIVE_MINUTES_MS,
});
