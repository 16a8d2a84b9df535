import { type BodyOf, editDesign } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import { designQuery } from './get-design.ts';

export type DesignBody = BodyOf<typeof editDesign>;

/** Saves a design as a new revision; what rests on it is worked out anew. */
export function useEditDesign(id: string) {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: ({ body, etag }: { body: DesignBody; etag: string | null }) =>
      callApi(editDesign, { params: { id }, body, ifMatch: etag }),
    onSuccess: (answer) => {
      queryClient.setQueryData(designQuery(id).queryKey, answer);
      void queryClient.invalidateQueries({ queryKey: ['designs', 'list'] });
      void queryClient.invalidateQueries({ queryKey: ['cost-sheets'] });
    },
  });
}
