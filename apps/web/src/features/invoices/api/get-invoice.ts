import { type AnswerOf, getInvoice } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type Invoice = AnswerOf<typeof getInvoice>;
export type Payment = Invoice['payments'][number];

export function invoiceQuery(id: string) {
  return queryOptions({
    queryKey: ['invoices', 'one', id],
    queryFn: async ({ signal }) => (await callApi(getInvoice, { params: { id }, signal })).value,
  });
}
