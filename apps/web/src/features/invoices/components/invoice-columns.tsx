import { Link } from '@tanstack/react-router';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { moneyColumn } from '../../../components/data-table/money-column.tsx';
import { clientColumn } from '../../client-document/client-column.tsx';
import { mergedId } from '../../figures/merge-tables.ts';
import type { InvoiceSummary } from '../api/list-invoices.ts';
import { KIND_WORDS, standing } from './invoice-words.ts';

/** What is owed, as the sheet of an invoice names it in its address. */
export const OWED_FIGURE = mergedId('balance', 'balance/owed');

const currency = (invoice: InvoiceSummary) => invoice.currency;

/** The columns invoices are listed by. */
export function invoiceColumns(locale: string): readonly DataColumn<InvoiceSummary>[] {
  return [
    {
      id: 'number',
      header: 'Number',
      text: ({ number }) => number,
      render: ({ id, number }) => (
        <Link to="/invoices/$invoiceId" params={{ invoiceId: id }}>
          {number}
        </Link>
      ),
    },
    { id: 'kind', header: 'Kind', text: ({ kind }) => KIND_WORDS[kind] },
    {
      id: 'state',
      header: 'State',
      text: ({ state, daysOverdue }) => standing(state, daysOverdue),
    },
    clientColumn(),
    {
      id: 'quote',
      header: 'Quote',
      text: ({ quoteNumber }) => quoteNumber,
      render: ({ quoteId, quoteNumber }) => (
        <Link to="/quotes/$quoteId" params={{ quoteId }}>
          {quoteNumber}
        </Link>
      ),
    },
    { id: 'title', header: 'For', text: ({ title }) => title },
    { id: 'issuedOn', header: 'Issued', text: ({ issuedOn }) => issuedOn },
    { id: 'dueOn', header: 'Due', text: ({ state, dueOn }) => (state === null ? '' : dueOn) },
    moneyColumn({ id: 'total', header: 'Total with tax', locale, amount: ({ total }) => total, currency }),
    // A credit note asks for nothing itself: what it gives back is counted on its invoice.
    moneyColumn({
      id: 'owed',
      header: 'Owed',
      locale,
      amount: ({ state, owed }) => (state === null ? null : owed),
      currency,
      link: ({ id }, text) => (
        <Link
          to="/invoices/$invoiceId"
          params={{ invoiceId: id }}
          search={{ figure: OWED_FIGURE }}
          aria-label={`Owed: ${text}, working`}
        >
          {text}
        </Link>
      ),
    }),
  ];
}
