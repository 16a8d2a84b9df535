import { type AnswerOf, removeDemo } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type RemovedDemo = AnswerOf<typeof removeDemo>;

/** Removes the demo. Where nobody is left who can sign in, this leads on to setting up the first owner. */
export function useRemoveDemo() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () => callApi(removeDemo),
    onSuccess: async ({ value }) => {
      // The link is given this once, and this page's session is gone: it must not be lost to a sign-in page.
      if (value.setUpPath !== null) location.assign(value.setUpPath);
      else await client.invalidateQueries();
    },
  });
}
