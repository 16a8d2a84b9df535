import { type BodyOf, editWorkshop } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import { workshopQuery } from './get-workshop.ts';

export type WorkshopBody = BodyOf<typeof editWorkshop>;

/** Saves the workshop; nearly every cost and rate rests on its settings, so all answers become stale. */
export function useEditWorkshop() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ body, etag }: { body: WorkshopBody; etag: string | null }) =>
      callApi(editWorkshop, { body, ifMatch: etag }),
    onSuccess: async (answer) => {
      client.setQueryData(workshopQuery.queryKey, answer);
      await client.invalidateQueries();
    },
  });
}
