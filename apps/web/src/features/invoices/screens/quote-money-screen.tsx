import { type AnswerOf, type getStatement, issueInvoice } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { EntryForm } from '../../../components/record-editor/entry-form.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { Figures } from '../../figures/figures.tsx';
import { mergedId, mergeTables } from '../../figures/merge-tables.ts';
import { type Statement, statementQuery } from '../api/get-statement.ts';
import { type InvoiceWanted, invoicePreviewQuery } from '../api/work-out-invoice.ts';
import { InvoicePreview } from '../components/invoice-preview.tsx';
import { ScheduleSection } from '../components/schedule-section.tsx';
import { StatementInvoices, StatementSums } from '../components/statement-rows.tsx';
import { FRESH_WANTED, scheduledId, wantedGroups, wantedOf } from '../components/wanted-fields.ts';
import '../components/invoice.css';

type Whole = AnswerOf<typeof getStatement>;

interface AgreedProps {
  readonly quoteId: string;
  readonly statement: Statement;
  readonly whole: Whole;
}

const FINAL = wantedOf(FRESH_WANTED);

const SAME_THROUGHOUT = ['client', 'quote', 'title'];

function nameOf(quote: Whole['quote']): string {
  return quote === null ? 'Quote' : `Quote ${quote.number ?? ''}, ${quote.title}`;
}

function Agreed({ quoteId, statement, whole }: AgreedProps) {
  const { asOf, client, quote, figures } = whole;
  const [values, setValues] = useState(FRESH_WANTED);
  const [wanted, setWanted] = useState<InvoiceWanted | null>(null);
  const mayIssue = useMayCall(issueInvoice);
  const preview = useQuery({
    ...invoicePreviewQuery(quoteId, wanted ?? FINAL),
    enabled: wanted !== null && mayIssue,
  });
  const look = (next: typeof values): void => {
    setValues(next);
    setWanted(wantedOf(next));
  };
  const shown = wanted === null ? undefined : preview.data;
  return (
    <Figures table={mergeTables({ statement: figures, preview: shown?.figures })}>
      <Sheet>
        <SheetHeader
          title="Money"
          path={
            <Link to="/quotes/$quoteId" params={{ quoteId }}>
              {nameOf(quote)}
            </Link>
          }
          facts={[
            {
              label: 'Client',
              value: (
                <Link to="/clients/$clientId/statement" params={{ clientId: client.id }}>
                  {client.name}
                </Link>
              ),
            },
            { label: 'As of', value: asOf },
            { label: 'Currency', value: statement.currency },
          ]}
        />
        <StatementSums statement={statement} named={(id) => mergedId('statement', id)} />
        <ScheduleSection
          statement={statement}
          onWanted={(payment) => look({ ...values, kind: scheduledId(payment) })}
        />
        {mayIssue && (
          <Section title="The next invoice" note="looked at first, then issued">
            <EntryForm
              groups={wantedGroups(statement.schedule, statement.currency)}
              values={values}
              onChange={(next) => {
                setValues(next);
                setWanted(null);
              }}
              onEnter={() => look(values)}
              entry={{
                isPending: wanted !== null && preview.isFetching,
                error: wanted === null ? null : preview.error,
              }}
              act="Look at it"
              pendingText="Working it out ..."
            />
            {wanted !== null && shown !== undefined && (
              <InvoicePreview quoteId={quoteId} wanted={wanted} preview={shown} />
            )}
          </Section>
        )}
        <StatementInvoices statement={statement} without={SAME_THROUGHOUT} />
      </Sheet>
    </Figures>
  );
}

/** What an accepted quote brings: agreed, invoiced, paid and owed, and the next invoice. */
export function QuoteMoneyScreen() {
  const { quoteId = '' } = useParams({ strict: false });
  const read = useQuery(statementQuery({ quoteId }));
  const [statement] = read.data?.statements ?? [];
  if (read.data && statement)
    return <Agreed key={quoteId} quoteId={quoteId} statement={statement} whole={read.data} />;
  const toQuote = (
    <Link to="/quotes/$quoteId" params={{ quoteId }}>
      Quote
    </Link>
  );
  return (
    <Sheet>
      <SheetHeader title="Money" path={toQuote} />
      {read.isPending && <Loading />}
      {read.isError && <ErrorNotice error={read.error} retry={() => void read.refetch()} />}
      {read.data && (
        <EmptyState title="Nothing is agreed yet" action={toQuote}>
          Invoices are issued from a quote once the client has accepted it.
        </EmptyState>
      )}
    </Sheet>
  );
}
