import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useParams } from '@tanstack/react-router';
import { RecordSheet } from '../../../components/record-editor/record-sheet.tsx';
import { useLengthSystem } from '../../../lib/use-session.ts';
import { suppliersQuery } from '../api/list-suppliers.ts';
import { materialCalls } from '../api/material-calls.ts';
import { materialGroups, materialInput, materialValues } from '../components/material-form.ts';
import { MaterialPrices } from '../components/material-prices.tsx';
import { FORM_WORDS } from '../components/material-words.ts';

/** One material with its prices, or a new one where the address names none. */
export function MaterialScreen() {
  const { materialId } = useParams({ strict: false });
  const navigate = useNavigate();
  const system = useLengthSystem();
  const suppliers = useQuery(suppliersQuery);
  const choices = (suppliers.data ?? []).map(({ id, name, code }) => ({ id, label: name, note: code }));
  return (
    <RecordSheet
      // The supplier box takes its choices once; they belong to what it is keyed by.
      key={`${materialId ?? 'new'} ${system} ${suppliers.isSuccess ? 'ready' : ''}`}
      calls={materialCalls}
      id={materialId ?? null}
      path={<Link to="/materials">Materials</Link>}
      newTitle="New material"
      consequence="It can no longer be named in bills. A material that a supplier's article is linked to stays."
      facts={(material) => [
        { label: 'Code', value: material.code },
        { label: 'Form', value: FORM_WORDS[material.form] },
      ]}
      groups={materialGroups(choices, system)}
      toValues={(material) => materialValues(material, system)}
      toInput={(values) => materialInput(values, system)}
      above={(material) => <MaterialPrices material={material} />}
      onCreated={(material) =>
        void navigate({ to: '/materials/$materialId', params: { materialId: material.id } })
      }
      onRemoved={() => void navigate({ to: '/materials' })}
    />
  );
}
