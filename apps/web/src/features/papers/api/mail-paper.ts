import { type BodyOf, mailPaper } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef } from 'react';
import { callApi } from '../../../lib/api-client.ts';
import { useIntentKey } from '../../../lib/record-calls.ts';

/** Once it went through, the same text sent again is another mail. */
export function useMailPaper(documentId: string) {
  const client = useQueryClient();
  const keyFor = useIntentKey();
  const done = useRef(0);
  return useMutation({
    mutationFn: async (body: BodyOf<typeof mailPaper>) =>
      (
        await callApi(mailPaper, {
          params: { id: documentId },
          body,
          idempotencyKey: keyFor([done.current, body]),
        })
      ).value,
    onSuccess: () => {
      done.current += 1;
      return client.invalidateQueries({ queryKey: ['mail'] });
    },
  });
}
