import { listClients } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

/** The clients a cost sheet can be made for. */
export const clientChoicesQuery = queryOptions({
  queryKey: ['clients', 'choices'],
  queryFn: async ({ signal }) => {
    const clients = await everyItem(listClients, {}, signal);
    return clients.map(({ id, name }) => ({ id, label: name }));
  },
});
