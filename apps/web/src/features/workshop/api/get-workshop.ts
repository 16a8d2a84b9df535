import { getWorkshop } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export const workshopQuery = queryOptions({
  queryKey: ['workshop', 'record'],
  queryFn: ({ signal }) => callApi(getWorkshop, { signal }),
});
