import { changeRole, type Role } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** Changes what a person may do; tokens beyond the new role are revoked with it, and it may be one's own role. */
export function useChangeRole() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ id, role }: { id: string; role: Role }) =>
      callApi(changeRole, { params: { id }, body: { role } }),
    onSettled: () =>
      Promise.all(
        ['users', 'api-tokens', 'sign-in'].map((term) => client.invalidateQueries({ queryKey: [term] })),
      ),
  });
}
