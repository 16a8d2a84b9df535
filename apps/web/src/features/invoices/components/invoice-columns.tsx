import { decimal } from '@scantling/decimals';
import { Link } from '@tanstack/react-router';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { formatMoney } from '../../../lib/format.ts';
import type { InvoiceSummary } from '../api/list-invoices.ts';
import { KIND_WORDS, standing } from './invoice-words.ts';

type Column = DataColumn<InvoiceSummary>;

function money(id: 'total' | 'owed', header: string, locale: string): Column {
  return {
    id,
    header,
    isNumeric: true,
    text: (invoice) => invoice[id],
    sortBy: (invoice) => decimal(invoice[id]),
    // A credit note asks for nothing itself: what it gives back is counted on its invoice.
    render: (invoice) =>
      id === 'owed' && invoice.state === null ? '–' : formatMoney(invoice[id], invoice.currency, { locale }),
  };
}

/** The columns invoices are listed by. */
export function invoiceColumns(locale: string): readonly Column[] {
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
    {
      id: 'client',
      header: 'Client',
      text: ({ clientName }) => clientName,
      render: ({ clientId, clientName }) => (
        <Link to="/clients/$clientId" params={{ clientId }}>
          {clientName}
        </Link>
      ),
    },
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
    money('total', 'Total with tax', locale),
    money('owed', 'Owed', locale),
  ];
}
