import { useMutation, useQueryClient } from '@tanstack/react-query';
import { z } from 'zod';
import { callApi } from '../../../lib/api-client.ts';

/** A route of the sign-in library, not of ours; its answer is not used, the session is asked for instead. */
const signIn = {
  method: 'POST',
  path: '/api/auth/sign-in/email',
  body: z.object({ email: z.string(), password: z.string() }),
  answer: z.unknown(),
};

export interface Credentials {
  readonly email: string;
  readonly password: string;
}

export function useSignIn() {
  const queryClient = useQueryClient();
  return useMutation({
    mutationFn: (body: Credentials) => callApi(signIn, { body }),
    // What an earlier reader was allowed to see must not show to the next one.
    onSuccess: () => queryClient.clear(),
  });
}
