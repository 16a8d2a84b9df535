import { type BodyOf, resendMail } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

interface Intent {
  readonly to: NonNullable<BodyOf<typeof resendMail>['to']>;
  /** One for each time somebody means to send, so that a lost answer sends nothing twice. */
  readonly key: string;
}

export function useResendMail(id: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: async ({ to, key }: Intent) =>
      (await callApi(resendMail, { params: { id }, body: { to }, idempotencyKey: key })).value,
    onSuccess: () => client.invalidateQueries({ queryKey: ['mail'] }),
  });
}
