import { createExchangeRate } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { useQuery } from '@tanstack/react-query';
import { LineChart } from '../../../components/charts/line-chart.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { formatNumber } from '../../../lib/format.ts';
import { localToday } from '../../../lib/local-today.ts';
import { useCurrency, useMayCall } from '../../../lib/use-session.ts';
import { type ExchangeRate, exchangeRatesQuery } from '../api/list-exchange-rates.ts';
import { NewRate } from '../components/new-rate.tsx';

const RATE_PLACES = 6;
const pairOf = ({ from, to }: ExchangeRate): string => `${to} for 1 ${from}`;

const COLUMNS: readonly DataColumn<ExchangeRate>[] = [
  { id: 'day', header: 'Day', width: 120, text: (row) => row.onDate },
  { id: 'pair', header: 'Pair', width: 160, text: pairOf },
  {
    id: 'rate',
    header: 'Rate',
    width: 130,
    isNumeric: true,
    text: (row) => formatNumber(row.rate, RATE_PLACES, { places: RATE_PLACES }),
    sortBy: (row) => decimal(row.rate),
  },
  { id: 'source', header: 'Read where', width: 360, text: (row) => row.source },
];

/** A point per day: of two rates of one day the one entered later holds, and stands first in the answer. */
function pointsOf(rates: readonly ExchangeRate[]) {
  const byDay = new Map<string, string>();
  const newestLast = rates.toSorted((a, b) => a.createdAt.localeCompare(b.createdAt));
  for (const { onDate, rate } of newestLast) byDay.set(onDate, rate);
  return [...byDay].map(([at, value]) => ({ at, value }));
}

export function ExchangeRatesScreen() {
  const rates = useQuery(exchangeRatesQuery);
  const currency = useCurrency();
  const mayEnter = useMayCall(createExchangeRate);
  const pairs = new Set((rates.data ?? []).map(pairOf));
  return (
    <Sheet>
      <SheetHeader
        title="Exchange rates"
        facts={currency === '' ? [] : [{ label: 'Workshop reckons in', value: currency }]}
      />
      {mayEnter && (
        <Section title="New rate" note="Kept for good; a correction is another rate of the same day.">
          <NewRate key={currency} currency={currency} />
        </Section>
      )}
      {rates.isPending && <Loading />}
      {rates.isError && <ErrorNotice error={rates.error} retry={() => void rates.refetch()} />}
      {rates.data?.length === 0 && (
        <EmptyState title="Dated rates will stand here.">
          Prices in another currency are costed at the newest rate of or before the day of the sheet.
        </EmptyState>
      )}
      {rates.data !== undefined && rates.data.length > 0 && (
        <>
          <Section title="Through time">
            {[...pairs].map((pair) => (
              <LineChart
                key={pair}
                label={pair}
                series={[
                  {
                    id: pair,
                    label: pair,
                    until: localToday(),
                    points: pointsOf((rates.data ?? []).filter((rate) => pairOf(rate) === pair)),
                  },
                ]}
                axis="date"
                axisLabel="Day"
                write={(value) => formatNumber(value, RATE_PLACES)}
                isStepped
              />
            ))}
          </Section>
          <Section title="All rates">
            <DataTable label="Exchange rates" columns={COLUMNS} rows={rates.data} rowId={(row) => row.id} />
          </Section>
        </>
      )}
    </Sheet>
  );
}
