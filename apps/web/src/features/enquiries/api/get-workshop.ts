import { getWorkshop } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** In which system lengths are typed and shown. */
export const workshopUnitsQuery = queryOptions({
  queryKey: ['workshop', 'unit-system'],
  queryFn: async ({ signal }) => (await callApi(getWorkshop, { signal })).value.unitSystem,
});
