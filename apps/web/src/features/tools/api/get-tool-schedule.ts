import { type AnswerOf, getToolSchedule } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type ToolSchedule = AnswerOf<typeof getToolSchedule>;

/** How the books write a tool off, year by year. */
export function toolScheduleQuery(id: string) {
  return queryOptions({
    queryKey: ['tools', 'schedule', id],
    queryFn: async ({ signal }) =>
      (await callApi(getToolSchedule, { params: { id }, query: { working: 'true' }, signal })).value,
    staleTime: 0,
  });
}
