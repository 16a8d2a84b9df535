import { type AnswerOf, listPriceLists } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export type PriceList = AnswerOf<typeof listPriceLists>['items'][number];

/** All lists, or those of one supplier. */
export const priceListsQuery = (supplierId?: string) =>
  queryOptions({
    queryKey: ['price-lists', 'list', supplierId ?? ''],
    queryFn: ({ signal }) => everyItem<PriceList>(listPriceLists, { query: { supplierId } }, signal),
  });
