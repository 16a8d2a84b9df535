import { removeScenario } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useRemoveScenario() {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: ({ id, version }: { id: string; version: number }) =>
      callApi(removeScenario, { params: { id }, ifMatch: `"${version}"` }),
    onSettled: () => queryClient.invalidateQueries({ queryKey: ['scenarios'] }),
  });
}
