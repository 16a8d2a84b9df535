import { getMailService } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export const mailServiceQuery = queryOptions({
  queryKey: ['mail', 'service'],
  queryFn: async ({ signal }) => (await callApi(getMailService, { signal })).value,
});
