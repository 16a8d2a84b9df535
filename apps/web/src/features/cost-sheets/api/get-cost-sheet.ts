import { type AnswerOf, getCostSheet } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type CostSheetRecord = AnswerOf<typeof getCostSheet>;

export function costSheetQuery(id: string) {
  return queryOptions({
    queryKey: ['cost-sheets', 'one', id],
    queryFn: ({ signal }) => callApi(getCostSheet, { params: { id }, signal }),
  });
}
