import type { Supplier } from '@scantling/contracts';
import { Link, useNavigate } from '@tanstack/react-router';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { RecordList } from '../../../components/record-editor/record-list.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { formatMoney, formatPercent } from '../../../lib/format.ts';
import { supplierCalls } from '../api/supplier-calls.ts';

const money = (amount: string | null, supplier: Supplier): string =>
  amount === null ? '–' : formatMoney(amount, supplier.currency);

const COLUMNS: readonly DataColumn<Supplier>[] = [
  {
    id: 'name',
    header: 'Supplier',
    text: (row) => row.name,
    render: (row) => (
      <Link to="/suppliers/$supplierId" params={{ supplierId: row.id }}>
        {row.name}
      </Link>
    ),
  },
  { id: 'code', header: 'Code', text: (row) => row.code },
  { id: 'currency', header: 'Currency', text: (row) => row.currency },
  {
    id: 'tax',
    header: 'Prices',
    text: (row) => `${row.taxIncluded ? 'with' : 'without'} ${formatPercent(row.taxRate)} tax`,
  },
  {
    id: 'minimum',
    header: 'Minimum order',
    isNumeric: true,
    text: (row) => money(row.minimumOrder, row),
  },
  {
    id: 'freight',
    header: 'Freight per order',
    isNumeric: true,
    text: (row) => money(row.freightPerOrder, row),
  },
  {
    id: 'lead',
    header: 'Lead time',
    isNumeric: true,
    text: (row) => (row.leadDays === null ? '–' : `${row.leadDays} days`),
    sortBy: (row) => row.leadDays,
  },
];

export function SuppliersScreen() {
  const navigate = useNavigate();
  return (
    <Sheet>
      <SheetHeader title="Suppliers" />
      <RecordList
        calls={supplierCalls}
        label="Suppliers"
        columns={COLUMNS}
        newLink={
          <Link to="/suppliers/new" className="button button-main">
            New supplier
          </Link>
        }
        emptyTitle="Suppliers and their terms will stand here."
        emptyText="Enter the first; a price list needs the supplier it is from."
        onOpen={(row) => void navigate({ to: '/suppliers/$supplierId', params: { supplierId: row.id } })}
      />
    </Sheet>
  );
}
