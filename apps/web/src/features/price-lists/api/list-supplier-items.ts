import { type AnswerOf, listSupplierItems } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export type SupplierItem = AnswerOf<typeof listSupplierItems>['items'][number];

/** What a supplier sells, by its own codes. */
export const supplierItemsQuery = (supplierId: string) =>
  queryOptions({
    queryKey: ['price-lists', 'items', supplierId],
    queryFn: ({ signal }) => everyItem<SupplierItem>(listSupplierItems, { query: { supplierId } }, signal),
    enabled: supplierId !== '',
  });
