import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { type Quote, quoteQuery, type Revision, revisionQuery } from '../api/get-quote.ts';
import { DraftSheet } from '../components/draft-sheet.tsx';
import { RemoveDraft } from '../components/remove-draft.tsx';
import { RevisionsSection } from '../components/revisions-section.tsx';
import type { Sent } from '../components/send-section.tsx';
import { SentSheet } from '../components/sent-sheet.tsx';
import { STATE_WORDS } from '../components/state-words.ts';
import '../components/quote.css';

const PATH = <Link to="/quotes">Quotes</Link>;

interface HeadProps {
  readonly quote: Quote;
  readonly revision: Revision;
  readonly actions?: React.ReactNode;
}

function Head({ quote, revision, actions }: HeadProps) {
  const name = revision.kind === 'quote' ? `Revision ${revision.revision}` : `Addition ${revision.series}`;
  return (
    <SheetHeader
      title={revision.title}
      path={PATH}
      facts={[
        { label: 'Number', value: revision.number ?? 'when it is sent' },
        {
          label: 'Client',
          value: (
            <Link to="/clients/$clientId" params={{ clientId: quote.clientId }}>
              {quote.clientName}
            </Link>
          ),
        },
        { label: 'Shown', value: name },
        { label: 'State', value: STATE_WORDS[revision.state] },
        ...(revision.validUntil === null ? [] : [{ label: 'Holds until', value: revision.validUntil }]),
        ...(quote.enquiryId === null
          ? []
          : [
              {
                label: 'Asked in',
                value: (
                  <Link to="/enquiries/$enquiryId" params={{ enquiryId: quote.enquiryId }}>
                    an enquiry
                  </Link>
                ),
              },
            ]),
      ]}
      actions={actions}
    />
  );
}

function OneRevision({ quote, id }: { readonly quote: Quote; readonly id: string }) {
  const read = useQuery(revisionQuery(id));
  const [sent, setSent] = useState<Sent | null>(null);
  const navigate = useNavigate();
  if (read.isPending)
    return (
      <Sheet>
        <SheetHeader title={quote.title} path={PATH} />
        <Loading />
      </Sheet>
    );
  if (read.isError)
    return (
      <Sheet>
        <SheetHeader title={quote.title} path={PATH} />
        <ErrorNotice error={read.error} retry={() => void read.refetch()} />
      </Sheet>
    );
  const { value: revision, etag } = read.data;
  const goTo = (revisionId: string): void =>
    void navigate({
      to: '/quotes/$quoteId',
      params: { quoteId: quote.id },
      search: { revision: revisionId },
      ignoreBlocker: true,
    });
  return (
    <Sheet>
      {revision.state === 'draft' ? (
        <DraftSheet
          revision={revision}
          etag={etag}
          head={
            <Head
              quote={quote}
              revision={revision}
              actions={<RemoveDraft revision={revision} etag={etag} />}
            />
          }
          onSent={(answer) => {
            setSent(answer);
            goTo(revision.id);
          }}
        />
      ) : (
        <SentSheet
          quote={quote}
          revision={revision}
          etag={etag}
          sent={sent}
          head={(actions) => <Head quote={quote} revision={revision} actions={actions} />}
          onGoTo={goTo}
        />
      )}
      <RevisionsSection quote={quote} shownId={revision.id} />
    </Sheet>
  );
}

/** A quote: the revision that holds, or the one its address names. */
export function QuoteScreen() {
  const { quoteId = '' } = useParams({ strict: false });
  const { revision } = useSearch({ strict: false });
  const quote = useQuery(quoteQuery(quoteId));
  if (quote.data) {
    const id = revision ?? quote.data.currentRevisionId;
    return <OneRevision key={id} quote={quote.data} id={id} />;
  }
  return (
    <Sheet>
      <SheetHeader title="Quote" path={PATH} />
      {quote.isPending && <Loading />}
      {quote.isError && <ErrorNotice error={quote.error} retry={() => void quote.refetch()} />}
    </Sheet>
  );
}
