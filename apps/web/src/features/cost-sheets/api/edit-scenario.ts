import { editScenario } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import type { ScenarioBody } from './create-scenario.ts';

/** Changes a scenario at the version that was read. */
export function useEditScenario() {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: ({ id, version, body }: { id: string; version: number; body: ScenarioBody }) =>
      callApi(editScenario, { params: { id }, body, ifMatch: `"${version}"` }),
    onSettled: () => queryClient.invalidateQueries({ queryKey: ['scenarios'] }),
  });
}
