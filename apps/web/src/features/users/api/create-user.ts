import { type BodyOf, createUser } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useCreateUser() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (body: BodyOf<typeof createUser>) => callApi(createUser, { body }),
    onSuccess: () => client.invalidateQueries({ queryKey: ['users'] }),
  });
}
