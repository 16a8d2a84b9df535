import { type AnswerOf, proposePaperMail } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type PaperMail = AnswerOf<typeof proposePaperMail>;

/** The mail proposed for a stored paper, and those it went out with. */
export function paperMailQuery(documentId: string) {
  return queryOptions({
    queryKey: ['mail', 'paper', documentId],
    queryFn: async ({ signal }) =>
      (await callApi(proposePaperMail, { params: { id: documentId }, signal })).value,
  });
}
