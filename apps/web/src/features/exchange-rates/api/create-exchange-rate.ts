import { type BodyOf, createExchangeRate } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type CallableRoute, callApi, newIdempotencyKey } from '../../../lib/api-client.ts';
import type { Draft } from '../../../lib/record-calls.ts';

export function useCreateExchangeRate() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (body: Draft<BodyOf<typeof createExchangeRate>>) =>
      callApi<CallableRoute>(createExchangeRate, { body, idempotencyKey: newIdempotencyKey() }),
    onSuccess: () => client.invalidateQueries({ queryKey: ['exchange-rates'] }),
  });
}
