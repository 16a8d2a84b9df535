import { decimal } from '@scantling/decimals';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams, useSearch } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { formatMoney, formatNumber, formatPercent } from '../../../lib/format.ts';
import { type PriceLine, priceLinesQuery } from '../api/list-price-lines.ts';
import { type PriceList, priceListsQuery } from '../api/list-price-lists.ts';
import { priceUnitWords } from '../components/change-words.ts';
import '../../../components/record-editor/record-editor.css';

const number = (text: string | null): string => (text === null ? '–' : formatNumber(text, 4));

function columnsFor(list: PriceList | undefined): readonly DataColumn<PriceLine>[] {
  return [
    { id: 'code', header: 'Code', width: 150, text: (row) => row.code },
    { id: 'description', header: 'Description', width: 320, text: (row) => row.description || '–' },
    { id: 'material', header: 'Material', width: 150, text: (row) => row.material ?? 'not linked' },
    {
      id: 'price',
      header: 'Price',
      width: 110,
      isNumeric: true,
      text: (row) => (list ? formatMoney(row.amount, list.currency, { isFull: true }) : row.amount),
      sortBy: (row) => decimal(row.amount),
    },
    { id: 'unit', header: 'Per', width: 80, text: (row) => priceUnitWords(row.unit) },
    {
      id: 'from',
      header: 'From',
      width: 80,
      isNumeric: true,
      text: (row) => number(row.breakFrom),
      sortBy: (row) => decimal(row.breakFrom),
    },
    {
      id: 'kind',
      header: 'Break holds for',
      width: 140,
      text: (row) => (row.breakKind === 'all-units' ? 'all units' : 'units beyond it'),
    },
    { id: 'pack', header: 'Pack', width: 80, isNumeric: true, text: (row) => number(row.packSize) },
    {
      id: 'least',
      header: 'Minimum',
      width: 90,
      isNumeric: true,
      text: (row) => number(row.minimumQuantity),
    },
    {
      id: 'lead',
      header: 'Lead time',
      width: 90,
      isNumeric: true,
      text: (row) => (row.leadDays === null ? '–' : `${row.leadDays} days`),
      sortBy: (row) => row.leadDays,
    },
    {
      id: 'row',
      header: 'Row',
      width: 60,
      isNumeric: true,
      text: (row) => String(row.rowNumber),
      sortBy: (row) => row.rowNumber,
    },
  ];
}

/** The lines of one list. They are kept for good: a correction is another list. */
export function PriceListScreen() {
  const { priceListId = '' } = useParams({ strict: false });
  const lists = useQuery(priceListsQuery());
  const lines = useQuery(priceLinesQuery(priceListId));
  const { line: lineId } = useSearch({ strict: false });
  const [typed, setTyped] = useState<string | null>(null);
  // A working leads to one line: its article is found first, until something else is sought.
  const meant = lines.data?.find(({ id }) => id === lineId);
  const sought = typed ?? meant?.code ?? '';
  const list = lists.data?.find(({ id }) => id === priceListId);
  const columns = useMemo(() => columnsFor(list), [list]);
  const found = useMemo(() => {
    const word = sought.trim().toLowerCase();
    return (lines.data ?? []).filter((row) =>
      [row.code, row.description, row.material ?? ''].some((text) => text.toLowerCase().includes(word)),
    );
  }, [lines.data, sought]);
  return (
    <Sheet>
      <SheetHeader
        title={list?.name ?? 'Price list'}
        path={<Link to="/price-lists">Price lists</Link>}
        facts={
          list
            ? [
                { label: 'Supplier', value: list.supplierName },
                { label: 'Holds', value: `${list.validFrom} – ${list.validTo ?? 'open'}` },
                { label: 'Currency', value: list.currency },
                {
                  label: 'Tax',
                  value: `${list.taxIncluded ? 'with' : 'without'} ${formatPercent(list.taxRate)}`,
                },
                { label: 'List', value: list.isComplete ? 'complete' : 'not complete' },
                { label: 'Lines', value: formatNumber(list.lineCount, 0) },
              ]
            : []
        }
        actions={
          <Link to="/price-lists/$priceListId/impact" params={{ priceListId }} className="button">
            What it moves
          </Link>
        }
      />
      {lines.isPending && <Loading />}
      {lines.isError && <ErrorNotice error={lines.error} retry={() => void lines.refetch()} />}
      {lines.data && (
        <>
          <div className="list-acts">
            <TextInput label="Find" type="search" value={sought} onChange={setTyped} />
            {lineId !== undefined && (
              <p role="status">
                {meant
                  ? `Row ${meant.rowNumber} is the one you came from; empty the search to see the whole list.`
                  : 'The line you came from does not stand on this list.'}
              </p>
            )}
          </div>
          <DataTable
            label="Lines"
            columns={columns}
            rows={found}
            rowId={(row) => row.id}
            currentRowId={meant?.id ?? null}
            empty="No line fits what is sought."
          />
        </>
      )}
    </Sheet>
  );
}
