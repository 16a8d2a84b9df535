import { useMemo } from 'react';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import { EditGrid } from '../../../components/edit-grid/edit-grid.tsx';
import type { GridUndo } from '../../../components/edit-grid/grid-edits.ts';
import { Select } from '../../../components/select.tsx';
import { Section } from '../../../components/sheet.tsx';
import type { RecordChoices } from '../api/list-bill-choices.ts';
import type { DraftState } from './bill-draft.ts';
import { FormulaHelp } from './formula-help.tsx';
import { parameterColumns, variantColumns } from './parameter-columns.ts';
import { freshParameter, freshVariant, withParameterIds } from './parameter-rows.ts';
import type { BillErrors } from './read-draft.ts';
import { withIds } from './row-ids.ts';
import type { SizedCells } from './sized-cells.ts';

interface ParameterSectionsProps {
  readonly state: DraftState;
  readonly errors: BillErrors;
  readonly records: RecordChoices | undefined;
  readonly sizes: SizedCells;
  /** The id of the variant whose sizes are shown; null: as drawn. */
  readonly variant: string | null;
  readonly onVariant: (id: string | null) => void;
  readonly undo: GridUndo;
  readonly canEdit: boolean;
  readonly onState: (state: DraftState) => void;
}

const AS_DRAWN = { id: '', label: 'As drawn' };

/** What may be chosen about a design, and named sets of such choices. */
export function ParameterSections(props: ParameterSectionsProps) {
  const { state, errors, records, sizes, variant, undo, canEdit, onState } = props;
  const { unitSystem, parameters, variants } = state;
  const ofParameters = useMemo(() => parameterColumns(unitSystem, records), [unitSystem, records]);
  const ofVariants = useMemo(
    () => variantColumns(parameters, variants, unitSystem, records),
    [parameters, variants, unitSystem, records],
  );
  if (!canEdit && parameters.length === 0) return null;
  const named = variants.flatMap(({ cells: { id = '', name = '' } }) =>
    id === '' ? [] : [{ id, label: name }],
  );
  const shared = {
    errorAt: (row: GridRow, column: string) => errors.get(row.key)?.get(column),
    undo,
    isReadOnly: !canEdit,
  };
  return (
    <>
      <Section
        title="Parameters"
        note={`what may be chosen; lengths in ${unitSystem === 'metric' ? 'mm' : 'inches'}`}
      >
        {canEdit && <FormulaHelp system={unitSystem} />}
        <EditGrid
          {...shared}
          label="Parameters"
          one="parameter"
          columns={ofParameters}
          rows={parameters}
          onRows={(next) => onState({ ...state, parameters: withParameterIds(next) })}
          freshRow={freshParameter}
          asideAt={(row, column) => sizes.get(row.key)?.get(column)}
        />
      </Section>
      {parameters.length > 0 && (
        <Section
          title="Variants"
          note="named sets of values; an empty cell stays as drawn"
          actions={
            named.length > 0 && (
              <Select
                label="Sizes shown below"
                choices={[AS_DRAWN, ...named]}
                value={named.some(({ id }) => id === variant) ? variant : ''}
                onChange={(id) => props.onVariant(id === '' ? null : id)}
              />
            )
          }
        >
          <EditGrid
            {...shared}
            label="Variants"
            one="variant"
            columns={ofVariants}
            rows={variants}
            onRows={(next) => onState({ ...state, variants: withIds(next) })}
            freshRow={freshVariant}
          />
        </Section>
      )}
    </>
  );
}
