import { removeCostSheet } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useRemoveCostSheet(id: string) {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: (etag: string | null) => callApi(removeCostSheet, { params: { id }, ifMatch: etag }),
    onSuccess: () => queryClient.invalidateQueries({ queryKey: ['cost-sheets', 'list'] }),
  });
}
