import { listScenarios } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** The scenarios of one cost sheet, by name. */
export function scenariosQuery(sheetId: string) {
  return queryOptions({
    queryKey: ['scenarios', 'list', sheetId],
    queryFn: async ({ signal }) =>
      (await callApi(listScenarios, { params: { id: sheetId }, signal })).value.items,
  });
}
