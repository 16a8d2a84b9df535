import { removeDesign } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useRemoveDesign(id: string) {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: (etag: string | null) => callApi(removeDesign, { params: { id }, ifMatch: etag }),
    onSuccess: () => queryClient.invalidateQueries({ queryKey: ['designs', 'list'] }),
  });
}
