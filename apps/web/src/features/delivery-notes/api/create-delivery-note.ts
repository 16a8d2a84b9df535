import { type BodyOf, createDeliveryNote } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import { useIntentKey } from '../../../lib/record-calls.ts';

export function useCreateDeliveryNote(quoteId: string) {
  const client = useQueryClient();
  const keyFor = useIntentKey();
  return useMutation({
    mutationFn: async (body: BodyOf<typeof createDeliveryNote>) =>
      (
        await callApi(createDeliveryNote, {
          params: { id: quoteId },
          body,
          idempotencyKey: keyFor(body),
        })
      ).value,
    onSuccess: () => client.invalidateQueries({ queryKey: ['delivery-notes'] }),
  });
}
