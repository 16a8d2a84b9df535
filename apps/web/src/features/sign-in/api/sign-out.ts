import { useMutation, useQueryClient } from '@tanstack/react-query';
import { z } from 'zod';
import { callApi } from '../../../lib/api-client.ts';

const signOut = {
  method: 'POST',
  path: '/api/auth/sign-out',
  body: z.object({}),
  answer: z.unknown(),
};

export function useSignOut() {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: () => callApi(signOut, { body: {} }),
    onSuccess: () => queryClient.clear(),
  });
}
