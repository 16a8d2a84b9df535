import { linkSupplierItem } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link, useSearch } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Checkbox } from '../../../components/checkbox.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { type SupplierItem, supplierItemsQuery } from '../api/list-supplier-items.ts';
import { suppliersQuery } from '../api/list-suppliers.ts';
import { LinkArticle } from '../components/link-article.tsx';
import '../../../components/record-editor/record-editor.css';

/** A supplier's articles, and which material each is here. */
export function ArticlesScreen() {
  const { supplier = '' } = useSearch({ strict: false });
  const items = useQuery(supplierItemsQuery(supplier));
  const suppliers = useQuery(suppliersQuery);
  const mayLink = useMayCall(linkSupplierItem);
  const [isOpenOnly, setIsOpenOnly] = useState(false);
  const [chosenId, setChosenId] = useState<string | null>(null);
  const columns = useMemo((): readonly DataColumn<SupplierItem>[] => {
    const act: DataColumn<SupplierItem> = {
      id: 'act',
      header: 'Link',
      width: 110,
      text: () => '',
      sortBy: false,
      render: (row) => (
        <Button look="quiet" aria-label={`Link ${row.code}`} onPress={() => setChosenId(row.id)}>
          {row.material === null ? 'Link' : 'Change'}
        </Button>
      ),
    };
    return [
      { id: 'code', header: 'Code', width: 170, text: (row) => row.code },
      { id: 'description', header: 'Description', width: 380, text: (row) => row.description || '–' },
      {
        id: 'material',
        header: 'Material',
        width: 320,
        text: (row) => row.material?.name ?? 'not linked',
        render: (row) =>
          row.material === null ? (
            'not linked'
          ) : (
            <Link to="/materials/$materialId" params={{ materialId: row.material.id }}>
              {row.material.name}
            </Link>
          ),
      },
      ...(mayLink ? [act] : []),
    ];
  }, [mayLink]);
  const shown = useMemo(
    () => (items.data ?? []).filter((item) => !isOpenOnly || item.material === null),
    [items.data, isOpenOnly],
  );
  const chosen = items.data?.find(({ id }) => id === chosenId);
  const name = suppliers.data?.find(({ id }) => id === supplier)?.name;
  return (
    <Sheet>
      <SheetHeader
        title="Articles"
        path={<Link to="/suppliers">Suppliers</Link>}
        facts={name === undefined ? [] : [{ label: 'Supplier', value: name }]}
      />
      {supplier === '' && <p>Choose a supplier on the sheet of suppliers first.</p>}
      {items.isLoading && <Loading />}
      {items.isError && <ErrorNotice error={items.error} retry={() => void items.refetch()} />}
      {items.data?.length === 0 && (
        <EmptyState title="What this supplier sells will stand here.">
          It comes with the first price list.
        </EmptyState>
      )}
      {chosen && (
        <Section title="Which material is it?">
          <LinkArticle key={chosen.id} item={chosen} onDone={() => setChosenId(null)} />
        </Section>
      )}
      {items.data !== undefined && items.data.length > 0 && (
        <>
          <div className="list-acts">
            <Checkbox label="Only those not linked yet" isSelected={isOpenOnly} onChange={setIsOpenOnly} />
          </div>
          <DataTable
            label="Articles"
            columns={columns}
            rows={shown}
            rowId={(row) => row.id}
            currentRowId={chosenId}
            empty="Every article is linked."
          />
        </>
      )}
    </Sheet>
  );
}
