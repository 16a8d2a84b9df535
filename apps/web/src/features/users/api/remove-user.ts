import { removeUser } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useRemoveUser(id: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () => callApi(removeUser, { params: { id } }),
    onSuccess: () =>
      Promise.all(['users', 'api-tokens'].map((term) => client.invalidateQueries({ queryKey: [term] }))),
  });
}
