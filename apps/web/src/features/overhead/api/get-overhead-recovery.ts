import { type AnswerOf, getOverheadRecovery } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type OverheadRecovery = AnswerOf<typeof getOverheadRecovery>;

/** The rates of both pools and where each yearly amount comes back; both move with every rate and record. */
export const overheadRecoveryQuery = queryOptions({
  queryKey: ['overhead', 'recovery'],
  queryFn: async ({ signal }) =>
    (await callApi(getOverheadRecovery, { query: { working: 'true' }, signal })).value,
  staleTime: 0,
});
