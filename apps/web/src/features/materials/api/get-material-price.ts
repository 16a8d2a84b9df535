import { type AnswerOf, getMaterialPrice } from '@scantling/contracts';
import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type UsedPrice = AnswerOf<typeof getMaterialPrice>;

/** What is asked for, as typed: the server says what of it cannot be read. */
export interface AskedNeed {
  readonly quantity: string;
  /** Left out: the unit of the newest price. */
  readonly unit?: UsedPrice['unit'];
  /** YYYY-MM-DD */
  readonly onDate: string;
}

/** The price a cost sheet of that day would take, with its working. */
export const materialPriceQuery = (id: string, need: AskedNeed) =>
  queryOptions({
    queryKey: ['price-lists', 'used', id, need],
    queryFn: async ({ signal }) =>
      (await callApi(getMaterialPrice, { params: { id }, query: { ...need, working: 'true' }, signal }))
        .value,
    placeholderData: keepPreviousData,
  });
