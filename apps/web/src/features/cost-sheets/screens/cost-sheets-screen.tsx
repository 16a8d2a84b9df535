import { createCostSheet } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import type { CostSheetRecord } from '../api/get-cost-sheet.ts';
import { costSheetsQuery } from '../api/list-cost-sheets.ts';
import { MissingCell } from '../components/missing-cell.tsx';

const COLUMNS: readonly DataColumn<CostSheetRecord>[] = [
  {
    id: 'title',
    header: 'Cost sheet',
    text: (sheet) => sheet.title,
    render: (sheet) => (
      <Link to="/cost-sheets/$sheetId" params={{ sheetId: sheet.id }}>
        {sheet.title}
      </Link>
    ),
  },
  {
    id: 'design',
    header: 'Design',
    text: (sheet) => sheet.designName,
    render: (sheet) => (
      <Link to="/designs/$designId" params={{ designId: sheet.designId }}>
        {sheet.designName}
      </Link>
    ),
  },
  { id: 'client', header: 'Client', text: (sheet) => sheet.clientName ?? '' },
  { id: 'basis', header: 'Basis', text: (sheet) => sheet.basis },
  { id: 'quantities', header: 'Quantities', sortBy: false, text: (sheet) => sheet.quantities.join(', ') },
  { id: 'onDate', header: 'Prices of', text: (sheet) => sheet.onDate ?? 'today' },
  {
    id: 'missing',
    header: 'Prices in it',
    sortBy: false,
    text: () => '',
    render: ({ id }) => <MissingCell sheetId={id} />,
  },
  { id: 'updatedAt', header: 'Changed', text: (sheet) => sheet.updatedAt.slice(0, 10) },
];

function NewSheetLink() {
  if (!useMayCall(createCostSheet)) return null;
  return (
    <Link to="/cost-sheets/new" className="button button-main">
      Make a cost sheet
    </Link>
  );
}

export function CostSheetsScreen() {
  const sheets = useQuery(costSheetsQuery);
  return (
    <Sheet>
      <SheetHeader
        title="Cost sheets"
        facts={sheets.data ? [{ label: 'Sheets', value: String(sheets.data.length) }] : []}
        actions={<NewSheetLink />}
      />
      {sheets.isPending && <Loading />}
      {sheets.isError && <ErrorNotice error={sheets.error} retry={() => void sheets.refetch()} />}
      {sheets.data?.length === 0 && (
        <EmptyState title="No cost sheets yet" action={<NewSheetLink />}>
          A cost sheet says what a design costs and what to charge, at one or several quantities.
        </EmptyState>
      )}
      {sheets.data !== undefined && sheets.data.length > 0 && (
        <DataTable
          label="Cost sheets"
          columns={COLUMNS}
          rows={sheets.data}
          rowId={(sheet) => sheet.id}
          initialSort={{ column: 'title' }}
        />
      )}
    </Sheet>
  );
}
