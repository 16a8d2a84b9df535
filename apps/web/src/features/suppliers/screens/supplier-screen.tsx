import { Link, useNavigate, useParams } from '@tanstack/react-router';
import { RecordSheet } from '../../../components/record-editor/record-sheet.tsx';
import { useCurrency } from '../../../lib/use-session.ts';
import { supplierCalls } from '../api/supplier-calls.ts';
import { supplierGroups, supplierInput, supplierValues } from '../components/supplier-form.ts';

/** One supplier, or a new one where the address names none. */
export function SupplierScreen() {
  const { supplierId } = useParams({ strict: false });
  const navigate = useNavigate();
  const currency = useCurrency();
  return (
    <RecordSheet
      key={`${supplierId ?? 'new'} ${currency}`}
      calls={supplierCalls}
      id={supplierId ?? null}
      path={<Link to="/suppliers">Suppliers</Link>}
      newTitle="New supplier"
      consequence="Its terms go. A supplier with price lists stays: prices are kept for good."
      facts={(supplier) => [
        { label: 'Code', value: supplier.code },
        { label: 'Currency', value: supplier.currency },
      ]}
      actions={({ id }) => (
        <>
          <Link to="/price-lists" search={{ supplier: id }} className="button">
            Its price lists
          </Link>
          <Link to="/price-lists/articles" search={{ supplier: id }} className="button">
            Its articles
          </Link>
          <Link to="/price-lists/import" search={{ supplier: id }} className="button">
            Import a price list
          </Link>
        </>
      )}
      groups={supplierGroups}
      toValues={(supplier) => supplierValues(supplier, currency)}
      toInput={supplierInput}
      onCreated={(supplier) =>
        void navigate({ to: '/suppliers/$supplierId', params: { supplierId: supplier.id } })
      }
      onRemoved={() => void navigate({ to: '/suppliers' })}
    />
  );
}
