import { listDesigns } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

/** The designs a cost sheet can be made for. */
export const designChoicesQuery = queryOptions({
  queryKey: ['designs', 'choices'],
  queryFn: async ({ signal }) => {
    const designs = await everyItem(listDesigns, {}, signal);
    return designs.map(({ id, name, code }) => ({ id, label: name, note: code }));
  },
});
