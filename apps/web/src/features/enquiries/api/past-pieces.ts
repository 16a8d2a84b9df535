import { type AnswerOf, getPastPiece, listCostSheets } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import { everyItem } from '../../../lib/record-calls.ts';

export type PastPieceAnswer = AnswerOf<typeof getPastPiece>;

/** Cost sheets to scale from, each with the design it costs. */
export const pastPieceChoicesQuery = queryOptions({
  queryKey: ['cost-sheets', 'past-pieces'],
  queryFn: async ({ signal }) =>
    (await everyItem<AnswerOf<typeof listCostSheets>['items'][number]>(listCostSheets, {}, signal)).map(
      ({ id, title, designName }) => ({ id, label: title, note: designName }),
    ),
});

/** A cost sheet at one piece, as it is worked out now. */
export function pastPieceQuery(id: string) {
  return queryOptions({
    queryKey: ['cost-sheets', 'past-piece', id],
    queryFn: async ({ signal }) => (await callApi(getPastPiece, { params: { id }, signal })).value,
  });
}
