import { type BodyOf, createCostSheet } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type CostSheetBody = BodyOf<typeof createCostSheet>;

export function useCreateCostSheet() {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: ({ body, idempotencyKey }: { body: CostSheetBody; idempotencyKey: string }) =>
      callApi(createCostSheet, { body, idempotencyKey }),
    onSuccess: () => queryClient.invalidateQueries({ queryKey: ['cost-sheets'] }),
  });
}
