import { cancelMail } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useCancelMail(id: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () => callApi(cancelMail, { params: { id } }),
    onSettled: () => client.invalidateQueries({ queryKey: ['mail'] }),
  });
}
