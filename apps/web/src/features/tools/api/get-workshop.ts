import { getWorkshop } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** The workshop's settings: a new tool starts with its rates. */
export const workshopQuery = queryOptions({
  queryKey: ['workshop', 'record'],
  queryFn: ({ signal }) => callApi(getWorkshop, { signal }),
});
