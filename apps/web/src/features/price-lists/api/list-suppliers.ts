import { listSuppliers } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

/** All suppliers, to choose whose list it is. */
export const suppliersQuery = queryOptions({
  queryKey: ['suppliers', 'list'],
  queryFn: ({ signal }) => everyItem(listSuppliers, {}, signal),
});
