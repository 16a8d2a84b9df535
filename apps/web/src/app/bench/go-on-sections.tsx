import { listEnquiries } from '@scantling/contracts';
import { queryOptions, useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useLocale } from 'react-aria-components';
import { ErrorNotice } from '../../components/notices.tsx';
import { Section } from '../../components/sheet.tsx';
import { costSheetsQuery } from '../../features/cost-sheets/api/list-cost-sheets.ts';
import { overdueQuery } from '../../features/invoices/api/list-overdue.ts';
import { undecidedImpactsQuery } from '../../features/price-impacts/api/price-impact-calls.ts';
import { openImportsQuery } from '../../features/price-lists/api/price-import-calls.ts';
import { standOf } from '../../features/price-lists/components/import-words.ts';
import { quotesQuery } from '../../features/quotes/api/list-quotes.ts';
import { callApi } from '../../lib/api-client.ts';
import { daysLeftWords } from '../../lib/days-left.ts';
import { formatMoney } from '../../lib/format.ts';
import { localMoment } from '../../lib/local-moment.ts';
import { localToday } from '../../lib/local-today.ts';
import { newestChanged } from './newest-changed.ts';
import './bench.css';

const MOST_SHOWN = 5;

const waitingEnquiriesQuery = queryOptions({
  queryKey: ['enquiries', 'waiting', MOST_SHOWN],
  queryFn: async ({ signal }) =>
    (await callApi(listEnquiries, { query: { outcome: 'open', limit: MOST_SHOWN }, signal })).value,
});

function RecentCostSheets() {
  const { data, error, isError, refetch } = useQuery(costSheetsQuery);
  if (isError) return <ErrorNotice error={error} retry={() => void refetch()} />;
  if (data === undefined || data.length === 0) return null;
  return (
    <Section title="Cost sheets changed last">
      <ul className="go-on-list">
        {newestChanged(data, MOST_SHOWN).map((sheet) => (
          <li key={sheet.id}>
            <Link to="/cost-sheets/$sheetId" params={{ sheetId: sheet.id }}>
              {sheet.title}
            </Link>
            <span>{sheet.clientName ?? 'for nobody in particular'}</span>
            <span className="go-on-moment">{localMoment(sheet.updatedAt)}</span>
          </li>
        ))}
      </ul>
      {data.length > MOST_SHOWN && (
        <p>
          <Link to="/cost-sheets">All {data.length} cost sheets</Link>
        </p>
      )}
    </Section>
  );
}

function OpenImports() {
  const { data, error, isError, refetch } = useQuery(openImportsQuery());
  if (isError) return <ErrorNotice error={error} retry={() => void refetch()} />;
  if (data === undefined || data.length === 0) return null;
  return (
    <Section title="Price lists being imported" note="Nothing of them is in the prices yet.">
      <ul className="go-on-list">
        {data.slice(0, MOST_SHOWN).map((one) => (
          <li key={one.id}>
            <Link to="/price-lists/imports/$importId" params={{ importId: one.id }}>
              {one.fileName}
            </Link>
            <span>{standOf(one)}</span>
            <span className="go-on-moment">{localMoment(one.createdAt)}</span>
          </li>
        ))}
      </ul>
    </Section>
  );
}

function WaitingQuotes() {
  const { data, error, isError, refetch } = useQuery(quotesQuery({ state: 'sent' }));
  if (isError) return <ErrorNotice error={error} retry={() => void refetch()} />;
  if (data === undefined || data.length === 0) return null;
  const today = localToday();
  const soonest = data.toSorted((left, right) =>
    (left.validUntil ?? '').localeCompare(right.validUntil ?? ''),
  );
  return (
    <Section title="Quotes waiting for an answer" note="the one that runs out first on top">
      <ul className="go-on-list">
        {soonest.slice(0, MOST_SHOWN).map(({ id, title, clientName, validUntil }) => (
          <li key={id}>
            <Link to="/quotes/$quoteId" params={{ quoteId: id }}>
              {title}
            </Link>
            <span>{clientName}</span>
            <span className="go-on-moment">
              {validUntil === null ? '' : daysLeftWords(today, validUntil)}
            </span>
          </li>
        ))}
      </ul>
      {data.length > MOST_SHOWN && (
        <p>
          <Link to="/quotes" search={{ state: 'sent' }}>
            All {data.length} that wait
          </Link>
        </p>
      )}
    </Section>
  );
}

function OverdueInvoices() {
  const { data, error, isError, refetch } = useQuery(overdueQuery);
  const { locale } = useLocale();
  if (isError) return <ErrorNotice error={error} retry={() => void refetch()} />;
  if (data === undefined || data.length === 0) return null;
  return (
    <Section title="Invoices overdue" note="the longest first">
      <ul className="go-on-list">
        {data.slice(0, MOST_SHOWN).map(({ invoice }) => (
          <li key={invoice.id}>
            <Link to="/invoices/$invoiceId" params={{ invoiceId: invoice.id }}>
              {invoice.number}, {invoice.clientName}
            </Link>
            <span>{formatMoney(invoice.owed, invoice.currency, { locale })} owed</span>
            <span className="go-on-moment">
              {invoice.daysOverdue} {invoice.daysOverdue === 1 ? 'day' : 'days'} over
            </span>
          </li>
        ))}
      </ul>
      <p>
        <Link to="/invoices/overdue">
          {data.length > MOST_SHOWN ? `All ${data.length}, with a reminder for each` : 'Remind of them'}
        </Link>
      </p>
    </Section>
  );
}

function WaitingEnquiries() {
  const { data, error, isError, refetch } = useQuery(waitingEnquiriesQuery);
  if (isError) return <ErrorNotice error={error} retry={() => void refetch()} />;
  if (data === undefined || data.items.length === 0) return null;
  return (
    <Section title="Enquiries not answered yet">
      <ul className="go-on-list">
        {data.items.map((enquiry) => (
          <li key={enquiry.id}>
            <Link to="/enquiries/$enquiryId" params={{ enquiryId: enquiry.id }}>
              {enquiry.name}
            </Link>
            <span>{enquiry.clientName ?? enquiry.askedBy}</span>
            <span className="go-on-moment">{enquiry.receivedOn}</span>
          </li>
        ))}
      </ul>
      {data.next !== null && (
        <p>
          <Link to="/enquiries">All of them</Link>
        </p>
      )}
    </Section>
  );
}

/** Lists whose prices moved under open quotes or cost sheets, until each is decided on. */
function MovedPrices() {
  const { data, error, isError, refetch } = useQuery(undecidedImpactsQuery);
  if (isError) return <ErrorNotice error={error} retry={() => void refetch()} />;
  if (data === undefined || data.openQuotes === 0) return null;
  const { openQuotes: quotes } = data;
  return (
    <Section
      title={`Prices have moved under ${quotes === 1 ? '1 open quote' : `${quotes} open quotes`}`}
      note="What is decided leaves this list."
    >
      <ul className="go-on-list">
        {data.items
          .filter(({ undecidedQuotes }) => undecidedQuotes > 0)
          .map(({ listId, listName, supplierName, undecidedQuotes, validFrom }) => (
            <li key={listId}>
              <Link to="/price-lists/$priceListId/impact" params={{ priceListId: listId }}>
                {supplierName}, {listName}
              </Link>
              <span>{undecidedQuotes} to decide</span>
              <span className="go-on-moment">{validFrom}</span>
            </li>
          ))}
      </ul>
    </Section>
  );
}

/** What was worked on last, and what waits for somebody; a kind with nothing to show is not there. */
export function GoOnSections() {
  return (
    <div className="go-on">
      <RecentCostSheets />
      <div>
        <MovedPrices />
        <OverdueInvoices />
        <WaitingQuotes />
        <WaitingEnquiries />
        <OpenImports />
      </div>
    </div>
  );
}
