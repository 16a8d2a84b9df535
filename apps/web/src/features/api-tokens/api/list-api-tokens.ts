import { type ApiToken, listApiTokens } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export const apiTokensQuery = queryOptions({
  queryKey: ['api-tokens', 'list'],
  queryFn: ({ signal }) => everyItem<ApiToken>(listApiTokens, {}, signal),
});
