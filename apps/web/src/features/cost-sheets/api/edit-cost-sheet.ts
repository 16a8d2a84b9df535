import { editCostSheet } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import type { CostSheetBody } from './create-cost-sheet.ts';
import { costSheetQuery } from './get-cost-sheet.ts';
import { workedCostSheetQuery } from './work-out-cost-sheet.ts';

/** Saves a sheet and has it worked out again at once. */
export function useEditCostSheet(id: string) {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: ({ body, etag }: { body: CostSheetBody; etag: string | null }) =>
      callApi(editCostSheet, { params: { id }, body, ifMatch: etag }),
    onSuccess: (answer) => {
      queryClient.setQueryData(costSheetQuery(id).queryKey, answer);
      void queryClient.invalidateQueries({ queryKey: workedCostSheetQuery(id).queryKey });
      void queryClient.invalidateQueries({ queryKey: ['cost-sheets', 'list'] });
    },
  });
}
