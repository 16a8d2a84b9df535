import { applyChanges } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import type { ChangesBody } from './preview-changes.ts';

/** Takes values over; any record may have moved with it, so that everything read before is stale. */
export function useApplyChanges(sheetId: string) {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: ({ body, etag }: { body: ChangesBody; etag: string | null }) =>
      callApi(applyChanges, { params: { id: sheetId }, body, ifMatch: etag }),
    onSuccess: () => queryClient.invalidateQueries(),
  });
}
