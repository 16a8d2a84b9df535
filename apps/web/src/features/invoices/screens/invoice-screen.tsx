import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader, type TitleBlockFact } from '../../../components/sheet.tsx';
import { Figures } from '../../figures/figures.tsx';
import { mergeTables, mergedId as of } from '../../figures/merge-tables.ts';
import { MailPaperSection } from '../../papers/mail-paper-section.tsx';
import { PaperLink } from '../../papers/paper-link.tsx';
import { type Invoice, invoiceQuery } from '../api/get-invoice.ts';
import { BalanceRow } from '../components/balance-row.tsx';
import { CreditSection } from '../components/credit-section.tsx';
import { DocumentSection } from '../components/document-section.tsx';
import { KIND_WORDS, standing } from '../components/invoice-words.ts';
import { PaymentsSection } from '../components/payments-section.tsx';
import { RemindersSection } from '../components/reminders-section.tsx';
import { WorkingSection } from '../components/working-section.tsx';
import '../components/invoice.css';

const PATH = <Link to="/invoices">Invoices</Link>;

function factsOf(invoice: Invoice): readonly TitleBlockFact[] {
  const isCredit = invoice.kind === 'credit-note';
  return [
    { label: 'State', value: standing(invoice.state, invoice.daysOverdue) },
    {
      label: 'Client',
      value: (
        <Link to="/clients/$clientId" params={{ clientId: invoice.clientId }}>
          {invoice.clientName}
        </Link>
      ),
    },
    {
      label: 'Quote',
      value: (
        <Link to="/quotes/$quoteId" params={{ quoteId: invoice.quoteId }}>
          {invoice.quoteNumber}
        </Link>
      ),
    },
    { label: 'Issued', value: invoice.issuedOn },
    ...(isCredit ? [] : [{ label: 'Due', value: invoice.dueOn }]),
    ...(invoice.creditsId === null
      ? []
      : [
          {
            label: 'Takes back from',
            value: (
              <Link to="/invoices/$invoiceId" params={{ invoiceId: invoice.creditsId }}>
                {invoice.document.credits?.number ?? 'its invoice'}
              </Link>
            ),
          },
        ]),
    ...(invoice.isDemo ? [{ label: 'Demo', value: 'invented' }] : []),
  ];
}

function Issued({ invoice }: { readonly invoice: Invoice }) {
  const { balance } = invoice;
  const isCredit = invoice.kind === 'credit-note';
  return (
    <Figures table={mergeTables({ balance: invoice.figures, working: invoice.working.figures })}>
      <Sheet>
        <SheetHeader
          title={`${KIND_WORDS[invoice.kind]} ${invoice.number}`}
          path={PATH}
          facts={factsOf(invoice)}
          actions={
            <>
              <PaperLink id={invoice.paperId} isButton>
                The paper as issued (PDF)
              </PaperLink>
              <Link
                to="/quotes/$quoteId/money"
                params={{ quoteId: invoice.quoteId }}
                className="button button-plain"
              >
                All money of the quote
              </Link>
            </>
          }
        />
        {!isCredit && (
          <BalanceRow
            label="What is owed on it"
            sums={[
              { label: 'Invoiced', figure: of('balance', balance.invoiced) },
              { label: 'Credited', figure: of('balance', balance.credited) },
              { label: 'Paid', figure: of('balance', balance.paid) },
              { label: 'Paid too much', figure: of('balance', balance.overpaid) },
              { label: 'Owed', figure: of('balance', balance.owed) },
            ]}
          />
        )}
        <DocumentSection
          document={invoice.document}
          title="What it says"
          worked={invoice.working.own}
          named={(id) => of('working', id)}
        />
        <WorkingSection invoice={invoice} />
        {!isCredit && (
          <>
            <PaymentsSection invoice={invoice} />
            <RemindersSection invoice={invoice} />
            <CreditSection invoice={invoice} />
          </>
        )}
        <MailPaperSection documentId={invoice.paperId} />
      </Sheet>
    </Figures>
  );
}

/** An invoice or credit note as it was issued, and what has come of it since. */
export function InvoiceScreen() {
  const { invoiceId = '' } = useParams({ strict: false });
  const invoice = useQuery(invoiceQuery(invoiceId));
  if (invoice.data) return <Issued key={invoice.data.id} invoice={invoice.data} />;
  return (
    <Sheet>
      <SheetHeader title="Invoice" path={PATH} />
      {invoice.isPending && <Loading />}
      {invoice.isError && <ErrorNotice error={invoice.error} retry={() => void invoice.refetch()} />}
    </Sheet>
  );
}
