import { createDeliveryNote } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useMemo } from 'react';
import { useLocale } from 'react-aria-components';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { PaperLink } from '../../papers/paper-link.tsx';
import { type Deliveries, type DeliveryNote, deliveriesQuery } from '../api/list-delivery-notes.ts';
import { contentWords, isOutstanding } from '../components/delivery-words.ts';
import { OrderedLines } from '../components/ordered-lines.tsx';
import { WriteDeliveryNote } from '../components/write-delivery-note.tsx';

function columns(locale: string): readonly DataColumn<DeliveryNote>[] {
  return [
    {
      id: 'number',
      header: 'Number',
      text: ({ number }) => number,
      render: ({ id, number }) => (
        <Link to="/delivery-notes/$deliveryNoteId" params={{ deliveryNoteId: id }}>
          {number}
        </Link>
      ),
    },
    { id: 'deliveredOn', header: 'Handed over on', text: ({ deliveredOn }) => deliveredOn },
    { id: 'content', header: 'What', text: (note) => contentWords(note, locale) },
    {
      id: 'paper',
      header: 'Paper',
      sortBy: false,
      text: () => '',
      render: ({ paperId, number }) => <PaperLink id={paperId}>{`${number} (PDF)`}</PaperLink>,
    },
  ];
}

function Written({ notes }: { readonly notes: readonly DeliveryNote[] }) {
  const { locale } = useLocale();
  const drawn = useMemo(() => columns(locale), [locale]);
  if (notes.length === 0) return null;
  return (
    <Section title="Delivery notes written">
      <DataTable label="Delivery notes written" columns={drawn} rows={notes} rowId={({ id }) => id} />
    </Section>
  );
}

function Ordered({ quoteId, deliveries }: { readonly quoteId: string; readonly deliveries: Deliveries }) {
  const { lines, notes } = deliveries;
  const mayWrite = useMayCall(createDeliveryNote) && lines.some(isOutstanding);
  if (lines.length === 0)
    return (
      <EmptyState
        title="Nothing is ordered yet"
        action={
          <Link to="/quotes/$quoteId" params={{ quoteId }}>
            Open the quote
          </Link>
        }
      >
        A delivery note is written for lines of a quote that the client has accepted.
      </EmptyState>
    );
  return (
    <>
      {mayWrite ? (
        // After a note is written the rest begins anew.
        <WriteDeliveryNote key={notes.length} quoteId={quoteId} lines={lines} />
      ) : (
        <Section
          title="What was ordered"
          {...(lines.some(isOutstanding) ? {} : { note: 'Everything is handed over.' })}
        >
          <OrderedLines lines={lines} />
        </Section>
      )}
      <Written notes={notes} />
    </>
  );
}

/** What of an accepted quote was handed over, and the next delivery note. */
export function DeliveryNotesScreen() {
  const { quoteId = '' } = useParams({ strict: false });
  const read = useQuery(deliveriesQuery(quoteId));
  const quote = read.data?.quote;
  const left = read.data?.lines.filter(isOutstanding).length;
  return (
    <Sheet>
      <SheetHeader
        title="Delivery notes"
        path={
          <Link to="/quotes/$quoteId" params={{ quoteId }}>
            {quote === undefined ? 'Quote' : `Quote ${quote.number ?? ''}, ${quote.title}`}
          </Link>
        }
        facts={
          read.data
            ? [
                { label: 'Client', value: read.data.quote.clientName },
                { label: 'Written', value: read.data.notes.length },
                { label: 'Lines still to come', value: left === 0 ? 'none' : left },
              ]
            : []
        }
      />
      {read.isPending && <Loading />}
      {read.isError && <ErrorNotice error={read.error} retry={() => void read.refetch()} />}
      {read.data && <Ordered quoteId={quoteId} deliveries={read.data} />}
    </Sheet>
  );
}
