import { type BodyOf, setUpOwner } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useSetUpOwner() {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: (body: BodyOf<typeof setUpOwner>) => callApi(setUpOwner, { body }),
    onSuccess: () => queryClient.clear(),
  });
}
