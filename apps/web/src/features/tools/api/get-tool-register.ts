import { type AnswerOf, getToolRegister } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type ToolRegister = AnswerOf<typeof getToolRegister>;

/** The register of one calendar year. */
export function toolRegisterQuery(year: number) {
  return queryOptions({
    queryKey: ['tools', 'register', year],
    queryFn: async ({ signal }) =>
      (await callApi(getToolRegister, { query: { year, working: 'true' }, signal })).value,
    staleTime: 0,
  });
}
