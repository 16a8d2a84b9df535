import { type AnswerOf, listSupplierItems } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export type SupplierItem = AnswerOf<typeof listSupplierItems>['items'][number];

/** What a supplier sells, by its own codes; what all sell without one. */
export const supplierItemsQuery = (supplierId: string | undefined) =>
  queryOptions({
    queryKey: ['price-lists', 'items', supplierId ?? 'all'],
    queryFn: ({ signal }) =>
      everyItem<SupplierItem>(
        listSupplierItems,
        { query: supplierId === undefined ? {} : { supplierId } },
        signal,
      ),
  });

/** How many articles of a supplier are no material here, so that their prices cost nothing. */
export const unlinkedCountQuery = (supplierId: string) =>
  queryOptions({
    queryKey: ['price-lists', 'items', supplierId, 'unlinked'],
    queryFn: async ({ signal }) =>
      (await everyItem<SupplierItem>(listSupplierItems, { query: { supplierId, linked: 'false' } }, signal))
        .length,
  });
