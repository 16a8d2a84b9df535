import { getMail } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

const LOOK_AGAIN_MS = 3_000;

/** Looked at again while it is on its way. */
export const mailQuery = (id: string) =>
  queryOptions({
    queryKey: ['mail', 'record', id],
    queryFn: async ({ signal }) => (await callApi(getMail, { params: { id }, signal })).value,
    refetchInterval: ({ state }) =>
      state.data?.state === 'waiting' || state.data?.state === 'sending' ? LOOK_AGAIN_MS : false,
  });
