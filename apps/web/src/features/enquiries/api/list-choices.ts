import { type ClientRecord, listClients, listPeople, type PersonRecord } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

/** Clients an enquiry can come from. */
export const clientChoicesQuery = queryOptions({
  queryKey: ['clients', 'choices'],
  queryFn: async ({ signal }) =>
    (await everyItem<ClientRecord>(listClients, {}, signal)).map(({ id, name }) => ({ id, label: name })),
});

/** People who spend hours. */
export const peopleChoicesQuery = queryOptions({
  queryKey: ['people', 'choices'],
  queryFn: async ({ signal }) =>
    (await everyItem<PersonRecord>(listPeople, {}, signal)).map(({ id, name, gradeName }) => ({
      id,
      label: name,
      note: gradeName,
    })),
});
