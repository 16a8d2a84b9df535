import { type AnswerOf, removeDemo } from '@scantling/contracts';
import { useMutation } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type RemovedDemo = AnswerOf<typeof removeDemo>;

/** Nothing is invalidated here: the demo's user goes too, and the page may be without a session afterwards. */
export function useRemoveDemo() {
  return useMutation({ mutationFn: () => callApi(removeDemo) });
}
