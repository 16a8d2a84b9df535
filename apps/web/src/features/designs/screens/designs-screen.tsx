import { createDesign } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { CoverName } from '../../../components/pictures/cover-name.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { type DesignSummary, designsQuery } from '../api/list-designs.ts';

const COLUMNS: readonly DataColumn<DesignSummary>[] = [
  {
    id: 'name',
    header: 'Design',
    text: (design) => design.name,
    render: (design) => (
      <CoverName cover={design.cover}>
        <Link to="/designs/$designId" params={{ designId: design.id }}>
          {design.name}
        </Link>
      </CoverName>
    ),
  },
  { id: 'code', header: 'Code', text: (design) => design.code },
  {
    id: 'parts',
    header: 'Parts',
    isNumeric: true,
    text: (design) => String(design.parts),
    sortBy: (design) => design.parts,
  },
  {
    id: 'operations',
    header: 'Operations',
    isNumeric: true,
    text: (design) => String(design.operations),
    sortBy: (design) => design.operations,
  },
  {
    id: 'lengths',
    header: 'Lengths',
    text: (design) => (design.unitSystem === 'imperial' ? 'inches' : 'metric'),
  },
  { id: 'updatedAt', header: 'Changed', text: (design) => design.updatedAt.slice(0, 10) },
];

export function DesignsScreen() {
  const designs = useQuery(designsQuery);
  const canCreate = useMayCall(createDesign);
  const enter = canCreate ? (
    <Link to="/designs/new" className="button button-main">
      Enter a design
    </Link>
  ) : undefined;
  return (
    <Sheet>
      <SheetHeader
        title="Designs"
        facts={designs.data ? [{ label: 'Designs', value: String(designs.data.length) }] : []}
        actions={enter}
      />
      {designs.isPending && <Loading />}
      {designs.isError && <ErrorNotice error={designs.error} retry={() => void designs.refetch()} />}
      {designs.data?.length === 0 && (
        <EmptyState title="No designs yet" action={enter}>
          A design holds the bill of materials of a piece: parts, hardware, finish and steps of work.
        </EmptyState>
      )}
      {designs.data !== undefined && designs.data.length > 0 && (
        <DataTable
          label="Designs"
          columns={COLUMNS}
          rows={designs.data}
          rowId={(design) => design.id}
          initialSort={{ column: 'name' }}
        />
      )}
    </Sheet>
  );
}
