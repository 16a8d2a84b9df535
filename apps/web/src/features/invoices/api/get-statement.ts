import { type AnswerOf, getStatement } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** What is agreed, invoiced, paid and owed in one currency. */
export type Statement = AnswerOf<typeof getStatement>['statements'][number];
export type ScheduledPayment = Statement['schedule'][number];

/** Of one quote or of all that a client accepted. */
export function statementQuery(whose: { readonly quoteId: string } | { readonly clientId: string }) {
  return queryOptions({
    queryKey: ['invoices', 'statement', whose],
    queryFn: async ({ signal }) => (await callApi(getStatement, { query: whose, signal })).value,
  });
}
