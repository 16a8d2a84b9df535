import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useMemo } from 'react';
import { useLocale } from 'react-aria-components';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Select } from '../../../components/select.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { type InvoiceFilter, invoicesQuery } from '../api/list-invoices.ts';
import { invoiceColumns } from '../components/invoice-columns.tsx';
import { isInvoiceKind, isInvoiceState, KIND_WORDS, STATE_WORDS } from '../components/invoice-words.ts';
import '../components/invoice.css';

function choicesOf(words: Readonly<Record<string, string>>) {
  return [{ id: '', label: 'Any' }, ...Object.entries(words).map(([id, label]) => ({ id, label }))];
}

/** Every invoice and credit note, narrowed down by state and kind; what is chosen stands in the address. */
export function InvoicesScreen() {
  const search = useSearch({ strict: false });
  const filter: InvoiceFilter = {
    state: isInvoiceState(search.state) ? search.state : undefined,
    kind: isInvoiceKind(search.kind) ? search.kind : undefined,
  };
  const navigate = useNavigate();
  const { locale } = useLocale();
  const invoices = useQuery(invoicesQuery(filter));
  const columns = useMemo(() => invoiceColumns(locale), [locale]);
  const isNarrowed = filter.state !== undefined || filter.kind !== undefined;
  const narrow = (next: InvoiceFilter) => void navigate({ to: '/invoices', search: { ...filter, ...next } });
  return (
    <Sheet>
      <SheetHeader
        title="Invoices"
        facts={invoices.data ? [{ label: isNarrowed ? 'Shown' : 'Issued', value: invoices.data.length }] : []}
        actions={
          <Link to="/invoices/overdue" className="button button-plain">
            What is overdue
          </Link>
        }
      />
      <div className="invoice-filter">
        <Select
          label="State"
          choices={choicesOf(STATE_WORDS)}
          value={filter.state ?? ''}
          onChange={(id) => narrow({ state: isInvoiceState(id) ? id : undefined })}
        />
        <Select
          label="Kind"
          choices={choicesOf(KIND_WORDS)}
          value={filter.kind ?? ''}
          onChange={(id) => narrow({ kind: isInvoiceKind(id) ? id : undefined })}
        />
      </div>
      {invoices.isPending && <Loading />}
      {invoices.isError && <ErrorNotice error={invoices.error} retry={() => void invoices.refetch()} />}
      {invoices.data?.length === 0 && (
        <EmptyState
          title={isNarrowed ? 'No such invoice' : 'No invoices yet'}
          action={
            isNarrowed ? (
              <Link to="/invoices">Show all invoices</Link>
            ) : (
              <Link to="/quotes" search={{ state: 'accepted' }}>
                Show the accepted quotes
              </Link>
            )
          }
        >
          {isNarrowed
            ? 'No invoice is of this state and kind.'
            : 'An invoice is issued from an accepted quote: its deposit, a part of it, and at the end the rest.'}
        </EmptyState>
      )}
      {invoices.data !== undefined && invoices.data.length > 0 && (
        <DataTable label="Invoices" columns={columns} rows={invoices.data} rowId={({ id }) => id} />
      )}
    </Sheet>
  );
}
