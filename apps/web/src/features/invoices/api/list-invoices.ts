import { type AnswerOf, listInvoices } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export type InvoiceSummary = AnswerOf<typeof listInvoices>['items'][number];
export type InvoiceKind = InvoiceSummary['kind'];
export type InvoiceState = NonNullable<InvoiceSummary['state']>;

/** What the list is narrowed down to; it stands in the address, so that it can be linked to. */
export interface InvoiceFilter {
  readonly state?: InvoiceState | undefined;
  readonly kind?: InvoiceKind | undefined;
}

export function invoicesQuery(filter: InvoiceFilter) {
  return queryOptions({
    queryKey: ['invoices', 'list', filter],
    queryFn: ({ signal }) => everyItem(listInvoices, { query: { ...filter } }, signal),
  });
}
