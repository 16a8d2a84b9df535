import type { Material } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { exactLength, type LengthSystem } from '@scantling/units';
import { Link, useNavigate } from '@tanstack/react-router';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { RecordList } from '../../../components/record-editor/record-list.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { formatNumber } from '../../../lib/format.ts';
import { useLengthSystem } from '../../../lib/use-session.ts';
import { materialCalls } from '../api/material-calls.ts';
import { FORM_WORDS } from '../components/material-words.ts';

const thickness = (row: Material): string | null => row.thicknessMm ?? row.nominalThicknessMm;

const columnsIn = (system: LengthSystem): readonly DataColumn<Material>[] => [
  {
    id: 'name',
    header: 'Material',
    width: 320,
    text: (row) => row.name,
    render: (row) => (
      <Link to="/materials/$materialId" params={{ materialId: row.id }}>
        {row.name}
      </Link>
    ),
  },
  { id: 'code', header: 'Code', width: 160, text: (row) => row.code },
  { id: 'form', header: 'Form', width: 160, text: (row) => FORM_WORDS[row.form] },
  { id: 'species', header: 'Species', width: 140, text: (row) => row.species ?? '–' },
  { id: 'grade', header: 'Grade', width: 120, text: (row) => row.grade ?? '–' },
  {
    id: 'thickness',
    header: 'Thickness',
    width: 130,
    isNumeric: true,
    text: (row) => {
      const found = thickness(row);
      return found === null ? '–' : exactLength(found, system);
    },
    sortBy: (row) => {
      const found = thickness(row);
      return found === null ? null : decimal(found);
    },
  },
  {
    id: 'density',
    header: 'Density, kg/m³',
    width: 140,
    isNumeric: true,
    text: (row) => (row.densityKgM3 === null ? '–' : formatNumber(row.densityKgM3, 0)),
    sortBy: (row) => (row.densityKgM3 === null ? null : decimal(row.densityKgM3)),
  },
];

export function MaterialsScreen() {
  const navigate = useNavigate();
  const system = useLengthSystem();
  const columns = useMemo(() => columnsIn(system), [system]);
  return (
    <Sheet>
      <SheetHeader title="Materials" />
      <RecordList
        calls={materialCalls}
        label="Materials"
        columns={columns}
        newLink={
          <Link to="/materials/new" className="button button-main">
            New material
          </Link>
        }
        emptyTitle="What can be bought will stand here, by form."
        emptyText="Enter the first; bills of materials and price lists name materials by their code."
        onOpen={(row) => void navigate({ to: '/materials/$materialId', params: { materialId: row.id } })}
      />
    </Sheet>
  );
}
