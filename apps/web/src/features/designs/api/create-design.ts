import { type BodyOf, createDesign } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type NewDesign = BodyOf<typeof createDesign>;

export function useCreateDesign() {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: ({ body, idempotencyKey }: { body: NewDesign; idempotencyKey: string }) =>
      callApi(createDesign, { body, idempotencyKey }),
    onSuccess: () => queryClient.invalidateQueries({ queryKey: ['designs'] }),
  });
}
