import { createPriceList } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Select } from '../../../components/select.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { formatNumber, formatPercent } from '../../../lib/format.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { type PriceList, priceListsQuery } from '../api/list-price-lists.ts';
import { suppliersQuery } from '../api/list-suppliers.ts';
import { ImportsSection } from '../components/imports-section.tsx';
import '../../../components/record-editor/record-editor.css';

const COLUMNS: readonly DataColumn<PriceList>[] = [
  {
    id: 'name',
    header: 'List',
    width: 240,
    text: (row) => row.name,
    render: (row) => (
      <Link to="/price-lists/$priceListId" params={{ priceListId: row.id }}>
        {row.name}
      </Link>
    ),
  },
  { id: 'supplier', header: 'Supplier', width: 260, text: (row) => row.supplierName },
  { id: 'from', header: 'From', width: 110, text: (row) => row.validFrom },
  { id: 'to', header: 'To', width: 110, text: (row) => row.validTo ?? 'open' },
  { id: 'complete', header: 'Complete', width: 90, text: (row) => (row.isComplete ? 'yes' : 'no') },
  { id: 'currency', header: 'Currency', width: 90, text: (row) => row.currency },
  {
    id: 'tax',
    header: 'Tax',
    width: 130,
    text: (row) => `${row.taxIncluded ? 'with' : 'without'} ${formatPercent(row.taxRate)}`,
  },
  {
    id: 'lines',
    header: 'Lines',
    width: 80,
    isNumeric: true,
    text: (row) => formatNumber(row.lineCount, 0),
    sortBy: (row) => row.lineCount,
  },
  { id: 'source', header: 'From file', width: 220, text: (row) => row.sourceName || 'by hand' },
];
const ALL = 'all';

export function PriceListsScreen() {
  const { supplier } = useSearch({ strict: false });
  const navigate = useNavigate();
  const lists = useQuery(priceListsQuery(supplier));
  const suppliers = useQuery(suppliersQuery);
  const mayImport = useMayCall(createPriceList);
  const start = (
    <Link to="/price-lists/import" search={{ supplier }} className="button button-main">
      Import a price list
    </Link>
  );
  return (
    <Sheet>
      <SheetHeader title="Price lists" />
      <div className="list-acts">
        <Select
          label="Supplier"
          choices={[
            { id: ALL, label: 'All suppliers' },
            ...(suppliers.data ?? []).map(({ id, name }) => ({ id, label: name })),
          ]}
          value={supplier ?? ALL}
          onChange={(id) =>
            void navigate({ to: '/price-lists', search: { supplier: id === ALL ? undefined : id } })
          }
        />
        {mayImport && start}
      </div>
      {lists.isPending && <Loading />}
      {lists.isError && <ErrorNotice error={lists.error} retry={() => void lists.refetch()} />}
      {lists.data?.length === 0 && (
        <EmptyState title="Dated lists will stand here, newest first.">
          Import a file or paste rows out of a spreadsheet.
        </EmptyState>
      )}
      {lists.data !== undefined && lists.data.length > 0 && (
        <Section title="Dated lists" note="Newest first; kept for good.">
          <DataTable
            label="Price lists"
            columns={COLUMNS}
            rows={lists.data}
            rowId={(row) => row.id}
            onOpenRow={(row) =>
              void navigate({ to: '/price-lists/$priceListId', params: { priceListId: row.id } })
            }
          />
        </Section>
      )}
      <ImportsSection supplierId={supplier} suppliers={suppliers.data ?? []} />
    </Sheet>
  );
}
