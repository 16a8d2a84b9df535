import { loadDemo } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useLoadDemo() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () => callApi(loadDemo),
    onSuccess: () => client.invalidateQueries(),
  });
}
