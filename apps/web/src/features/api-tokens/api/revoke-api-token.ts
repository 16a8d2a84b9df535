import { revokeApiToken } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useRevokeApiToken(id: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () => callApi(revokeApiToken, { params: { id } }),
    onSuccess: () => client.invalidateQueries({ queryKey: ['api-tokens'] }),
  });
}
