import { type AnswerOf, listMaterialPrices } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export type MaterialPrice = AnswerOf<typeof listMaterialPrices>['items'][number];

/** Every price ever asked for a material, newest list first. */
export const materialPricesQuery = (id: string) =>
  queryOptions({
    queryKey: ['price-lists', 'material', id],
    queryFn: ({ signal }) => everyItem<MaterialPrice>(listMaterialPrices, { params: { id } }, signal),
  });
