import type { EnquiryRecord } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { Link, useNavigate } from '@tanstack/react-router';
import { Fragment } from 'react';
import { useLocale } from 'react-aria-components';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { CoverName } from '../../../components/pictures/cover-name.tsx';
import { RecordList } from '../../../components/record-editor/record-list.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { formatMoney, formatNumber } from '../../../lib/format.ts';
import { enquiryCalls } from '../api/enquiry-calls.ts';
import { OUTCOME_WORDS, SOURCE_WORDS } from '../components/enquiry-words.ts';
import { ResultsSection } from '../components/results-section.tsx';

function columnsIn(locale: string): readonly DataColumn<EnquiryRecord>[] {
  return [
    {
      id: 'name',
      header: 'Enquiry',
      text: ({ name }) => name,
      render: (enquiry) => (
        <CoverName cover={enquiry.cover}>
          <Link to="/enquiries/$enquiryId" params={{ enquiryId: enquiry.id }}>
            {enquiry.name}
          </Link>
        </CoverName>
      ),
    },
    { id: 'askedBy', header: 'Asked by', text: ({ clientName, askedBy }) => clientName ?? askedBy },
    { id: 'receivedOn', header: 'Received', text: ({ receivedOn }) => receivedOn },
    { id: 'source', header: 'Came by', text: ({ source }) => SOURCE_WORDS[source] },
    { id: 'outcome', header: 'Outcome', text: ({ outcome }) => OUTCOME_WORDS[outcome] },
    {
      id: 'hours',
      header: 'Hours',
      isNumeric: true,
      text: ({ hoursSpent }) => formatNumber(hoursSpent, 2, { locale, places: 2 }),
      sortBy: ({ hoursSpent }) => decimal(hoursSpent),
    },
    {
      id: 'earlyPrice',
      header: 'Early price',
      isNumeric: true,
      text: ({ lastEarlyPrice: last }) =>
        last === null
          ? ''
          : `${formatMoney(last.low, last.currency, { locale })} to ${formatMoney(last.high, last.currency, { locale })}`,
      render: ({ id, lastEarlyPrice: last }) =>
        last === null
          ? ''
          : (['low', 'high'] as const).map((end) => {
              const text = formatMoney(last[end], last.currency, { locale });
              return (
                <Fragment key={end}>
                  {end === 'high' && ' to '}
                  <Link
                    to="/enquiries/$enquiryId/early-prices/$number"
                    params={{ enquiryId: id, number: String(last.number) }}
                    search={{ figure: `${end}/price` }}
                    aria-label={`Early price, ${end}: ${text}, working`}
                  >
                    {text}
                  </Link>
                </Fragment>
              );
            }),
      sortBy: ({ lastEarlyPrice }) => decimal(lastEarlyPrice?.low ?? '0'),
    },
  ];
}

/** Who asked for what, what came of it, and what it took. */
export function EnquiriesScreen() {
  const navigate = useNavigate();
  const { locale } = useLocale();
  return (
    <Sheet>
      <SheetHeader title="Enquiries" />
      <RecordList
        calls={enquiryCalls}
        label="Enquiries"
        columns={columnsIn(locale)}
        newLink={<Link to="/enquiries/new">Enter an enquiry</Link>}
        emptyTitle="Here stands who asked for what"
        emptyText="An enquiry keeps where it came from, the hours it took, the early prices given and what came of it."
        onOpen={({ id }) => void navigate({ to: '/enquiries/$enquiryId', params: { enquiryId: id } })}
      />
      <ResultsSection />
    </Sheet>
  );
}
