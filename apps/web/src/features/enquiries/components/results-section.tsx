import { decimal } from '@scantling/decimals';
import { useQuery } from '@tanstack/react-query';
import { useLocale } from 'react-aria-components';
import { StackedBar } from '../../../components/charts/stacked-bar.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Section } from '../../../components/sheet.tsx';
import { formatNumber } from '../../../lib/format.ts';
import { FigureValue } from '../../figures/figure-value.tsx';
import { Figures } from '../../figures/figures.tsx';
import { type EnquiryResults, enquiryResultsQuery } from '../api/get-enquiry-results.ts';
import './enquiry.css';
import { SOURCE_WORDS } from './enquiry-words.ts';

type Line = EnquiryResults['all'] & { readonly id: string; readonly label: string };

const SERIES = [
  { id: 'won', label: 'won' },
  { id: 'lost', label: 'lost' },
  { id: 'undecided', label: 'undecided' },
] as const;

/** What came of the enquiries by source, and what one takes in hours when it is won or lost. */
export function ResultsSection() {
  const results = useQuery(enquiryResultsQuery);
  if (results.isError) return <ErrorNotice error={results.error} retry={() => void results.refetch()} />;
  if (!results.data || results.data.sources.length === 0) return null;
  return (
    <Figures table={results.data.figures}>
      <div className="enquiry-results">
        <Section title="What came of them" note="The win rate is of those decided, won or lost.">
          <ResultsTable results={results.data} />
          <ResultsChart results={results.data} />
        </Section>
      </div>
    </Figures>
  );
}

function ResultsTable({ results }: { readonly results: EnquiryResults }) {
  const { figures } = results;
  const column = (
    id: Exclude<keyof EnquiryResults['all'], 'label'>,
    header: string,
    look: { readonly isPercent?: boolean; readonly places?: number },
  ): DataColumn<Line> => ({
    id,
    header,
    isNumeric: true,
    text: (line) => figures[line[id] ?? '']?.value ?? '',
    sortBy: (line) => decimal(figures[line[id] ?? '']?.value ?? '0'),
    render: (line) => {
      const figure = line[id];
      return figure === null ? 'none' : <FigureValue id={figure} isUnitHidden {...look} />;
    },
    ...(results.all[id] === null
      ? {}
      : { total: <FigureValue id={results.all[id]} look="total" isUnitHidden {...look} /> }),
  });
  const columns: DataColumn<Line>[] = [
    { id: 'label', header: 'Came by', text: ({ label }) => label, total: 'All' },
    column('received', 'Received', { places: 0 }),
    column('won', 'Won', { places: 0 }),
    column('lost', 'Lost', { places: 0 }),
    column('undecided', 'Undecided', { places: 0 }),
    column('winRate', 'Win rate', { isPercent: true }),
    column('hoursPerWon', 'Hours for one won', { places: 2 }),
    column('hoursPerLost', 'Hours for one lost', { places: 2 }),
  ];
  const rows = results.sources.map(
    (line): Line => ({ ...line, id: line.source, label: SOURCE_WORDS[line.source] }),
  );
  return <DataTable label="Results by source" columns={columns} rows={rows} rowId={({ id }) => id} />;
}

function ResultsChart({ results }: { readonly results: EnquiryResults }) {
  const { locale } = useLocale();
  const bars = results.sources.map((line) => ({
    label: SOURCE_WORDS[line.source],
    values: Object.fromEntries(SERIES.map(({ id }) => [id, results.figures[line[id]]?.value ?? '0'])),
  }));
  return (
    <StackedBar
      label="Enquiries by source and what came of them"
      barHead="Came by"
      series={SERIES}
      bars={bars}
      write={(count) => formatNumber(count, 0, { locale })}
    />
  );
}
