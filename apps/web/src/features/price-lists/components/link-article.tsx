import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ComboBox } from '../../../components/combo-box.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { useLinkSupplierItem } from '../api/link-supplier-item.ts';
import { materialsQuery } from '../api/list-materials.ts';
import type { SupplierItem } from '../api/list-supplier-items.ts';
import '../../../components/record-editor/record-editor.css';

/** Says which material an article is; all its prices, old and new, then price that material. */
export function LinkArticle({ item, onDone }: { item: SupplierItem; onDone: () => void }) {
  const materials = useQuery(materialsQuery);
  const [materialId, setMaterialId] = useState(item.material?.id ?? null);
  const link = useLinkSupplierItem(item.id);
  if (materials.isPending) return <Loading />;
  if (materials.isError)
    return <ErrorNotice error={materials.error} retry={() => void materials.refetch()} />;
  return (
    <div className="record-form">
      {link.isError && <ErrorNotice error={link.error} />}
      <div className="list-acts">
        <ComboBox
          label={`${item.code} ${item.description} is`}
          hint="All its prices, old and new, then price that material"
          choices={materials.data.map(({ id, name, code }) => ({ id, label: name, note: code }))}
          value={materialId}
          onChange={setMaterialId}
        />
      </div>
      <div className="form-acts">
        <Button
          look="main"
          isPending={link.isPending}
          pendingText="Saving ..."
          onPress={() => link.mutate(materialId, { onSuccess: onDone })}
        >
          {materialId === null ? 'Leave it without a material' : 'Link'}
        </Button>
        <Button onPress={onDone}>Leave as it is</Button>
      </div>
    </div>
  );
}
