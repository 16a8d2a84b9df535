import { type BodyOf, createScenario } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import { useIntentKey } from '../../../lib/record-calls.ts';

export type ScenarioBody = BodyOf<typeof createScenario>;

export function useCreateScenario(sheetId: string) {
  const queryClient = useQueryClient();
  const keyFor = useIntentKey();
  return useMutation({
    mutationFn: (body: ScenarioBody) =>
      callApi(createScenario, { params: { id: sheetId }, body, idempotencyKey: keyFor(body) }),
    onSuccess: () => queryClient.invalidateQueries({ queryKey: ['scenarios'] }),
  });
}
