import { listMaterials } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

/** All materials, to say which of them an article is. */
export const materialsQuery = queryOptions({
  queryKey: ['materials', 'list'],
  queryFn: ({ signal }) => everyItem(listMaterials, {}, signal),
});
