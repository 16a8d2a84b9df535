import { type AnswerOf, listPriceLines } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export type PriceLine = AnswerOf<typeof listPriceLines>['items'][number];

/** Lines of a list; lists are append-only, so that they never go stale. */
export const priceLinesQuery = (id: string) =>
  queryOptions({
    queryKey: ['price-lists', 'lines', id],
    queryFn: ({ signal }) => everyItem<PriceLine>(listPriceLines, { params: { id } }, signal),
  });
