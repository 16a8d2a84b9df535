import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { Link, useNavigate } from '@tanstack/react-router';
import { useMemo } from 'react';
import { Button } from '../../../components/button.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Section } from '../../../components/sheet.tsx';
import { formatNumber } from '../../../lib/format.ts';
import { endedImportsQuery, openImportsQuery, type PriceImport } from '../api/price-import-calls.ts';
import { standOf } from './import-words.ts';
import '../../../components/record-editor/record-editor.css';

function columnsFor(supplierNames: ReadonlyMap<string, string>): readonly DataColumn<PriceImport>[] {
  return [
    {
      id: 'file',
      header: 'File',
      width: 240,
      text: (row) => row.fileName,
      render: (row) => (
        <Link to="/price-lists/imports/$importId" params={{ importId: row.id }}>
          {row.fileName}
        </Link>
      ),
    },
    { id: 'stand', header: 'How it stands', width: 280, text: standOf },
    {
      id: 'supplier',
      header: 'Supplier',
      width: 240,
      text: (row) => supplierNames.get(row.supplierId) ?? '–',
    },
    { id: 'from', header: 'Prices hold from', width: 130, text: (row) => row.validFrom },
    {
      id: 'rows',
      header: 'Rows',
      width: 80,
      isNumeric: true,
      text: (row) => formatNumber(row.rowsRead, 0),
      sortBy: (row) => row.rowsRead,
    },
    { id: 'sent', header: 'Sent', width: 150, text: (row) => new Date(row.createdAt).toLocaleString() },
  ];
}

interface ImportsSectionProps {
  readonly supplierId: string | undefined;
  readonly suppliers: readonly { id: string; name: string }[];
}

/** Imports that were begun: those that wait for somebody, and below them what became of the others. */
export function ImportsSection({ supplierId, suppliers }: ImportsSectionProps) {
  const navigate = useNavigate();
  const open = useQuery(openImportsQuery(supplierId));
  const ended = useInfiniteQuery(endedImportsQuery(supplierId));
  const columns = useMemo(
    () => columnsFor(new Map(suppliers.map(({ id, name }) => [id, name]))),
    [suppliers],
  );
  const past = ended.data?.pages.flatMap(({ items }) => items) ?? [];
  const openRow = (row: PriceImport) =>
    void navigate({ to: '/price-lists/imports/$importId', params: { importId: row.id } });
  return (
    <>
      {open.isError && <ErrorNotice error={open.error} retry={() => void open.refetch()} />}
      {open.data !== undefined && open.data.length > 0 && (
        <Section title="Imports under way" note="Nothing of them is in the prices yet.">
          <DataTable
            label="Imports under way"
            columns={columns}
            rows={open.data}
            rowId={(row) => row.id}
            onOpenRow={openRow}
          />
        </Section>
      )}
      {past.length > 0 && (
        <Section title="Imports that are done">
          <DataTable
            label="Imports that are done"
            columns={columns}
            rows={past}
            rowId={(row) => row.id}
            onOpenRow={openRow}
          />
          {ended.hasNextPage && (
            <div className="list-more">
              <Button
                isPending={ended.isFetchingNextPage}
                pendingText="Reading ..."
                onPress={() => void ended.fetchNextPage()}
              >
                Show more
              </Button>
            </div>
          )}
        </Section>
      )}
    </>
  );
}
