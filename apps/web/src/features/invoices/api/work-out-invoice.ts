import { type BodyOf, workOutInvoice } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type InvoiceWanted = BodyOf<typeof workOutInvoice>;

/** What the invoice would say; worked out anew each time it is looked at. */
export function invoicePreviewQuery(quoteId: string, wanted: InvoiceWanted) {
  return queryOptions({
    queryKey: ['invoices', 'preview', quoteId, wanted],
    queryFn: async ({ signal }) =>
      (await callApi(workOutInvoice, { params: { id: quoteId }, body: wanted, signal })).value,
    staleTime: 0,
    gcTime: 0,
    retry: false,
  });
}
