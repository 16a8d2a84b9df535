import { type AnswerOf, listExchangeRates } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export type ExchangeRate = AnswerOf<typeof listExchangeRates>['items'][number];

export const exchangeRatesQuery = queryOptions({
  queryKey: ['exchange-rates', 'list'],
  queryFn: ({ signal }) => everyItem<ExchangeRate>(listExchangeRates, {}, signal),
});
