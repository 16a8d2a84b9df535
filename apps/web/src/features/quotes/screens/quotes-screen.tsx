import { createQuote } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useMemo } from 'react';
import { useLocale } from 'react-aria-components';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { moneyColumn } from '../../../components/data-table/money-column.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Select } from '../../../components/select.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { clientColumn } from '../../client-document/client-column.tsx';
import { clientChoicesQuery } from '../api/list-choices.ts';
import { type QuoteFilter, type QuoteSummary, quotesQuery } from '../api/list-quotes.ts';
import { MovedCell } from '../components/moved-cell.tsx';
import { isQuoteState, QUOTE_STATES, STATE_WORDS } from '../components/state-words.ts';
import '../components/quote.css';

function columns(locale: string): readonly DataColumn<QuoteSummary>[] {
  return [
    {
      id: 'title',
      header: 'Quote',
      text: ({ title }) => title,
      render: ({ id, title }) => (
        <Link to="/quotes/$quoteId" params={{ quoteId: id }}>
          {title}
        </Link>
      ),
    },
    { id: 'number', header: 'Number', text: ({ number }) => number ?? 'not yet' },
    clientColumn(),
    {
      id: 'state',
      header: 'State',
      text: ({ state, hasOpenDraft }) => `${STATE_WORDS[state]}${hasOpenDraft ? ', more waits' : ''}`,
    },
    moneyColumn({
      id: 'total',
      header: 'Total with tax',
      locale,
      amount: ({ total }) => total,
      currency: ({ currency }) => currency,
      link: ({ id, currentRevisionId, state }, text) => (
        <Link
          to="/quotes/$quoteId"
          params={{ quoteId: id }}
          search={{ revision: currentRevisionId, figure: state === 'draft' ? 'total' : 'sent:total' }}
          aria-label={`Total with tax: ${text}, working`}
        >
          {text}
        </Link>
      ),
    }),
    { id: 'validUntil', header: 'Valid until', text: ({ validUntil }) => validUntil ?? '' },
    {
      id: 'moved',
      header: 'Cost since it was sent',
      isNumeric: true,
      sortBy: false,
      text: () => '',
      render: (quote) => <MovedCell quote={quote} />,
    },
  ];
}

function BeginLink() {
  if (!useMayCall(createQuote)) return null;
  return (
    <Link to="/quotes/new" className="button button-main">
      Begin a quote
    </Link>
  );
}

/** Every quote, narrowed down by state and client; what is chosen stands in the address. */
export function QuotesScreen() {
  const search = useSearch({ strict: false });
  const filter: QuoteFilter = {
    state: isQuoteState(search.state) ? search.state : undefined,
    clientId: search.clientId,
  };
  const navigate = useNavigate();
  const { locale } = useLocale();
  const quotes = useQuery(quotesQuery(filter));
  const clients = useQuery(clientChoicesQuery);
  const drawn = useMemo(() => columns(locale), [locale]);
  const isNarrowed = filter.state !== undefined || filter.clientId !== undefined;
  const narrow = (next: QuoteFilter) => void navigate({ to: '/quotes', search: { ...filter, ...next } });
  return (
    <Sheet>
      <SheetHeader
        title="Quotes"
        facts={quotes.data ? [{ label: isNarrowed ? 'Shown' : 'Quotes', value: quotes.data.length }] : []}
        actions={<BeginLink />}
      />
      <div className="quote-filter">
        <Select
          label="State"
          choices={[{ id: '', label: 'Any' }, ...QUOTE_STATES.map((id) => ({ id, label: STATE_WORDS[id] }))]}
          value={filter.state ?? ''}
          onChange={(id) => narrow({ state: isQuoteState(id) ? id : undefined })}
        />
        <Select
          label="Client"
          choices={[{ id: '', label: 'Any' }, ...(clients.data ?? [])]}
          value={filter.clientId ?? ''}
          onChange={(id) => narrow({ clientId: id === '' ? undefined : id })}
        />
      </div>
      {quotes.isPending && <Loading />}
      {quotes.isError && <ErrorNotice error={quotes.error} retry={() => void quotes.refetch()} />}
      {quotes.data?.length === 0 && (
        <EmptyState
          title={isNarrowed ? 'No such quote' : 'No quotes yet'}
          action={isNarrowed ? <Link to="/quotes">Show all quotes</Link> : <BeginLink />}
        >
          {isNarrowed
            ? 'No quote is in this state for this client.'
            : 'A quote offers pieces from cost sheets to a client, who reads and accepts it by a link.'}
        </EmptyState>
      )}
      {quotes.data !== undefined && quotes.data.length > 0 && (
        <DataTable label="Quotes" columns={drawn} rows={quotes.data} rowId={({ id }) => id} />
      )}
    </Sheet>
  );
}
