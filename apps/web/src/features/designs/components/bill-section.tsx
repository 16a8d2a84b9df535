import { useMemo, useState } from 'react';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import { EditGrid } from '../../../components/edit-grid/edit-grid.tsx';
import type { GridUndo } from '../../../components/edit-grid/grid-edits.ts';
import type { FieldMessage } from '../../../components/field.tsx';
import { Section } from '../../../components/sheet.tsx';
import { Switch } from '../../../components/switch.tsx';
import { type BillChoices, billColumns } from './bill-columns.ts';
import { type DraftState, freshRow } from './bill-draft.ts';
import { BILL_FIELDS, type BillKind, KIND_WORDS } from './bill-fields.ts';
import type { BillErrors } from './read-draft.ts';
import { RowForm } from './row-form.tsx';
import { withIds } from './row-ids.ts';
import type { SizedCells } from './sized-cells.ts';

interface BillSectionProps {
  readonly kind: BillKind;
  readonly state: DraftState;
  readonly errors: BillErrors;
  readonly choices: BillChoices;
  /** What formulas come to. */
  readonly sizes: SizedCells;
  readonly undo: GridUndo;
  readonly canEdit: boolean;
  readonly onState: (state: DraftState) => void;
}

/** The rows of one kind as a grid, with the form of one row for what the grid has no column for. */
export function BillSection({
  kind,
  state,
  errors,
  choices,
  sizes,
  undo,
  canEdit,
  onState,
}: BillSectionProps) {
  const [isWhole, setIsWhole] = useState(false);
  const [formKey, setFormKey] = useState<string | null>(null);
  const { title, one, note } = KIND_WORDS[kind];
  const fields = BILL_FIELDS[kind];
  const system = state.unitSystem;
  const rows = state.bill[kind];
  const worked = [...new Set(rows.flatMap(({ key }) => [...(sizes.get(key)?.keys() ?? [])]))].join(' ');
  const columns = useMemo(
    () => billColumns(kind, { system, choices, isWhole, worked }),
    [kind, system, choices, isWhole, worked],
  );
  const onRows = (next: readonly GridRow[]): void =>
    onState({ ...state, bill: { ...state.bill, [kind]: withIds(next) } });
  const errorAt = (row: GridRow, column: string): FieldMessage | undefined => {
    const ofRow = errors.get(row.key);
    if (column !== 'further') return ofRow?.get(column);
    const hidden = fields.find((field) => !field.isColumn && ofRow?.has(field.path));
    return hidden && ofRow?.get(hidden.path);
  };
  const hasFurther = fields.some(({ isColumn }) => !isColumn);
  const inForm = rows.find(({ key }) => key === formKey);
  return (
    <Section
      title={title}
      note={note}
      actions={hasFurther && <Switch label="All columns" isSelected={isWhole} onChange={setIsWhole} />}
    >
      {rows.length === 0 && !canEdit ? (
        <p className="field-hint">None.</p>
      ) : (
        <EditGrid
          label={title}
          one={one}
          columns={columns}
          rows={rows}
          onRows={onRows}
          freshRow={(from) => freshRow(kind, from)}
          errorAt={errorAt}
          asideAt={(row, column) => sizes.get(row.key)?.get(column)}
          undo={undo}
          isReadOnly={!canEdit}
          onDetails={(row) => setFormKey(row.key)}
        />
      )}
      {inForm && canEdit && (
        <RowForm
          key={inForm.key}
          kind={kind}
          row={inForm}
          system={system}
          choices={choices}
          errors={errors.get(inForm.key)}
          onCells={(cells) => onRows(rows.map((row) => (row === inForm ? { ...row, cells } : row)))}
          onClose={() => setFormKey(null)}
        />
      )}
    </Section>
  );
}
