import { restoreDesignRevision } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { designQuery } from './get-design.ts';

/** Brings a revision back as the newest; what rests on the design is worked out anew. */
export function useRestoreDesignRevision(id: string) {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: ({ number, etag }: { number: number; etag: string | null }) =>
      callApi(restoreDesignRevision, { params: { id, number: String(number) }, ifMatch: etag }),
    onSuccess: (answer) => {
      queryClient.setQueryData(designQuery(id).queryKey, answer);
      void queryClient.invalidateQueries({ queryKey: ['designs', 'list'] });
      void queryClient.invalidateQueries({ queryKey: ['cost-sheets'] });
    },
    // What somebody else saved is shown, so that it is seen before it is asked again.
    onError: (error) => {
      if (error instanceof ApiProblem && error.status === 412)
        void queryClient.invalidateQueries({ queryKey: designQuery(id).queryKey });
    },
  });
}
