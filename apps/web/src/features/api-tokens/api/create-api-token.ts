import { type BodyOf, createApiToken } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useCreateApiToken() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (body: BodyOf<typeof createApiToken>) => callApi(createApiToken, { body }),
    onSuccess: () => client.invalidateQueries({ queryKey: ['api-tokens'] }),
    // The token is in the answer; it must not stay in memory once the screen is left.
    gcTime: 0,
  });
}
