import { linkSupplierItem } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Checkbox } from '../../../components/checkbox.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Select } from '../../../components/select.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { type SupplierItem, supplierItemsQuery } from '../api/list-supplier-items.ts';
import { suppliersQuery } from '../api/list-suppliers.ts';
import { LinkArticle } from '../components/link-article.tsx';
import '../../../components/record-editor/record-editor.css';

/** Articles of one supplier or of all, and which material each is here; what is shown stands in the address. */
export function ArticlesScreen() {
  const search = useSearch({ strict: false });
  const { supplier } = search;
  const isOpenOnly = search.linked === 'no';
  const navigate = useNavigate();
  const items = useQuery(supplierItemsQuery(supplier));
  const suppliers = useQuery(suppliersQuery);
  const mayLink = useMayCall(linkSupplierItem);
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
    const nameOf = new Map(suppliers.data?.map(({ id, name }) => [id, name]));
    const seller: DataColumn<SupplierItem> = {
      id: 'supplier',
      header: 'Supplier',
      width: 200,
      text: (row) => nameOf.get(row.supplierId) ?? '',
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
      ...(supplier === undefined ? [seller] : []),
      ...(mayLink ? [act] : []),
    ];
  }, [mayLink, supplier, suppliers.data]);
  const shown = useMemo(
    () => (items.data ?? []).filter((item) => !isOpenOnly || item.material === null),
    [items.data, isOpenOnly],
  );
  const chosen = items.data?.find(({ id }) => id === chosenId);
  const open = (items.data ?? []).filter(({ material }) => material === null).length;
  const show = (next: { supplier?: string | undefined; linked?: 'no' | undefined }) =>
    void navigate({ to: '/price-lists/articles', search: next });
  return (
    <Sheet>
      <SheetHeader
        title="Articles"
        path={<Link to="/suppliers">Suppliers</Link>}
        facts={
          items.data
            ? [
                { label: 'Articles', value: items.data.length },
                { label: 'Not linked', value: open },
              ]
            : []
        }
      />
      <div className="list-acts">
        <Select
          label="Supplier"
          choices={[
            { id: '', label: 'All' },
            ...(suppliers.data ?? []).map(({ id, name }) => ({ id, label: name })),
          ]}
          value={supplier ?? ''}
          onChange={(id) => show({ ...search, supplier: id === '' ? undefined : id })}
        />
        <Checkbox
          label="Only those not linked yet"
          isSelected={isOpenOnly}
          onChange={(isOnly) => show({ ...search, linked: isOnly ? 'no' : undefined })}
        />
      </div>
      {items.isLoading && <Loading />}
      {items.isError && <ErrorNotice error={items.error} retry={() => void items.refetch()} />}
      {items.data?.length === 0 && (
        <EmptyState title="What suppliers sell will stand here.">
          It comes with the first price list.
        </EmptyState>
      )}
      {chosen && (
        <Section title="Which material is it?">
          <LinkArticle key={chosen.id} item={chosen} onDone={() => setChosenId(null)} />
        </Section>
      )}
      {items.data !== undefined && items.data.length > 0 && (
        <DataTable
          label="Articles"
          columns={columns}
          rows={shown}
          rowId={(row) => row.id}
          currentRowId={chosenId}
          empty="Every article is linked."
        />
      )}
    </Sheet>
  );
}
