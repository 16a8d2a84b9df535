import type { PriceChange } from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import type { Currency } from '@scantling/money';
import { PRICING_UNITS } from '@scantling/units';
import { useInfiniteQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { Button } from '../../../components/button.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { formatAmount, formatNumber, formatPercent } from '../../../lib/format.ts';
import { type PriceImportRow, priceImportRowsQuery } from '../api/price-import-calls.ts';
import { priceUnitWords } from './change-words.ts';
import '../../../components/record-editor/record-editor.css';

const LEAST_PLACES = 2;
const number = (text: string | null | undefined): string =>
  text === null || text === undefined ? '–' : formatNumber(text, 4);

const ROW: DataColumn<PriceImportRow> = {
  id: 'row',
  header: 'Row',
  width: 70,
  text: (row) => String(row.rowNumber),
  sortBy: (row) => row.rowNumber,
};

const UNREADABLE: readonly DataColumn<PriceImportRow>[] = [
  ROW,
  {
    id: 'column',
    header: 'Column',
    width: 110,
    text: (row) => row.problems.map(({ column }) => column).join(', '),
  },
  {
    id: 'why',
    header: 'Why, and what to mend',
    width: 480,
    text: (row) => row.problems.map(({ message, mend }) => `${message}. ${mend}`).join(' '),
    sortBy: false,
  },
  {
    id: 'cells',
    header: 'As it stands in the file',
    width: 360,
    text: (row) => row.cells?.join(' | ') ?? '',
    sortBy: false,
  },
];

/** Change of the amount as a share of the old one, where both are of the same terms. */
function rise({ line, before, change }: PriceImportRow): string | null {
  if (line === null || before === null || (change !== 'dearer' && change !== 'cheaper')) return null;
  const old = decimal(before);
  return old.isZero() ? null : decimal(line.amount).minus(old).div(old).toFixed(6);
}

/** @param places decimal places of every price, so that the columns align */
function readable(places: number): readonly DataColumn<PriceImportRow>[] {
  const price = (row: PriceImportRow, value: string | null | undefined, currency: Currency | null): string =>
    typeof value !== 'string' || row.line === null
      ? '–'
      : formatAmount({ value, unit: `money/${PRICING_UNITS[row.line.unit].baseUnit}`, currency }, { places })
          .number;
  return [
    ROW,
    { id: 'code', header: 'Code', width: 150, text: ({ line }) => line?.code ?? '–' },
    { id: 'description', header: 'Description', width: 300, text: ({ line }) => line?.description || '–' },
    { id: 'material', header: 'Material', width: 140, text: ({ line }) => line?.material ?? '–' },
    {
      id: 'unit',
      header: 'Per',
      width: 80,
      text: ({ line }) => (line === null ? '–' : priceUnitWords(line.unit)),
    },
    { id: 'from', header: 'From', width: 80, isNumeric: true, text: ({ line }) => number(line?.breakFrom) },
    {
      id: 'before',
      header: 'Until now',
      width: 100,
      isNumeric: true,
      text: (row) => price(row, row.before, row.beforeCurrency),
      sortBy: ({ before }) => (before === null ? null : decimal(before)),
    },
    {
      id: 'price',
      header: 'Price',
      width: 100,
      isNumeric: true,
      text: (row) => price(row, row.line?.amount, row.currency),
      sortBy: ({ line }) => (line === null ? null : decimal(line.amount)),
    },
    {
      id: 'rise',
      header: 'Change',
      width: 90,
      isNumeric: true,
      text: (row) => {
        const share = rise(row);
        return share === null ? '–' : `${decimal(share).isNegative() ? '' : '+'}${formatPercent(share)}`;
      },
      sortBy: (row) => {
        const share = rise(row);
        return share === null ? null : decimal(share);
      },
    },
  ];
}

/** The rows of one kind; more come on request, since a list may have 50,000. */
export function ImportRows({ importId, change }: { importId: string; change: PriceChange }) {
  const rows = useInfiniteQuery(priceImportRowsQuery(importId, change));
  const all = useMemo(() => rows.data?.pages.flatMap(({ items }) => items) ?? [], [rows.data]);
  const columns = useMemo(() => {
    if (change === 'unreadable') return UNREADABLE;
    const amounts = all.flatMap(({ line, before }) => [line?.amount ?? '0', before ?? '0']);
    return readable(Math.max(LEAST_PLACES, ...amounts.map((amount) => decimal(amount).decimalPlaces())));
  }, [all, change]);
  if (rows.isPending) return <Loading />;
  if (rows.isError) return <ErrorNotice error={rows.error} retry={() => void rows.refetch()} />;
  return (
    <>
      <DataTable
        label="Rows"
        columns={columns}
        rows={all}
        rowId={(row) => `${row.rowNumber} ${row.line?.code ?? ''} ${row.line?.breakFrom ?? ''}`}
        maxHeight="60vh"
      />
      {rows.hasNextPage && (
        <div className="list-more">
          <Button
            isPending={rows.isFetchingNextPage}
            pendingText="Reading ..."
            onPress={() => void rows.fetchNextPage()}
          >
            Show more
          </Button>
        </div>
      )}
    </>
  );
}
