import { takeBackOwnValue } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useTakeBackOwnValue(sheetId: string) {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: ({ leaf, etag }: { leaf: string; etag: string | null }) =>
      callApi(takeBackOwnValue, { params: { id: sheetId }, query: { leaf }, ifMatch: etag }),
    onSuccess: () => queryClient.invalidateQueries({ queryKey: ['cost-sheets'] }),
  });
}
