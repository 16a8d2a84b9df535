import { listToolRates } from '@scantling/contracts';
import type { FigureNode } from '@scantling/figures';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** What an hour of each tool costs on the basis that pricing recovers, by the tool's id; they move with the workshop's settings. */
export const toolHoursQuery = queryOptions({
  queryKey: ['tools', 'rates', 'all'],
  queryFn: async ({ signal }) => {
    const { tools, figures } = (await callApi(listToolRates, { query: {}, signal })).value;
    return new Map<string, FigureNode>(
      tools.flatMap(({ id, rates }) => {
        const node = figures[rates.find(({ basis }) => basis === 'replacement')?.perHour ?? ''];
        return node === undefined ? [] : [[id, node] as const];
      }),
    );
  },
  staleTime: 0,
});
