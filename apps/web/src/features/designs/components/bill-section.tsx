import type { Bill } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import { useMemo, useState } from 'react';
import { Button } from '../../../components/button.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { Section } from '../../../components/sheet.tsx';
import { BILL_FIELDS, type BillField, type BillKind, type BillRow, KIND_WORDS } from './bill-fields.ts';
import { furtherText, shownText, valueAt } from './bill-text.ts';
import { RowForm } from './row-form.tsx';

const NUMERIC: readonly BillField['form'][] = ['count', 'number', 'length', 'percent'];

/** Sorts figures by their value, whatever the unit they are shown in. */
function sortBy(field: BillField): Pick<DataColumn<BillRow>, 'sortBy'> {
  if (!NUMERIC.includes(field.form)) return {};
  return { sortBy: (row) => String(valueAt(row, field.path) ?? '') };
}

interface BillSectionProps {
  readonly kind: BillKind;
  readonly bill: Bill;
  readonly system: LengthSystem;
  readonly canEdit: boolean;
  readonly onBill: (bill: Bill) => void;
}

/** The rows of one kind with the form of the one that is changed. */
export function BillSection({ kind, bill, system, canEdit, onBill }: BillSectionProps) {
  const [open, setOpen] = useState<{ readonly id: string | null } | null>(null);
  const { title, one, note } = KIND_WORDS[kind];
  const rows: readonly BillRow[] = bill[kind];
  const columns = useMemo(() => {
    const fields = BILL_FIELDS[kind];
    const name = (row: BillRow) => row.name;
    const found: DataColumn<BillRow>[] = [
      {
        id: 'name',
        header: 'Name',
        text: name,
        ...(canEdit
          ? {
              render: (row: BillRow) => (
                <Button
                  look="quiet"
                  onPress={() => setOpen({ id: row.id })}
                  aria-label={`Change ${row.name}`}
                >
                  {row.name}
                </Button>
              ),
            }
          : {}),
      },
      ...fields
        .filter((field) => field.isColumn && field.path !== 'name')
        .map((field) => ({
          id: field.path,
          header: field.label,
          isNumeric: NUMERIC.includes(field.form),
          text: (row: BillRow) => shownText(row, field, system),
          ...sortBy(field),
        })),
    ];
    if (fields.some((field) => !field.isColumn))
      found.push({
        id: 'further',
        header: 'Further',
        text: (row) => furtherText(row, fields, system),
        sortBy: false,
      });
    return found;
  }, [kind, system, canEdit]);
  const close = (): void => setOpen(null);
  return (
    <Section
      title={title}
      note={note}
      actions={canEdit ? <Button onPress={() => setOpen({ id: null })}>Add {one}</Button> : undefined}
    >
      {rows.length === 0 && open === null ? (
        <p className="field-hint">None yet.</p>
      ) : (
        rows.length > 0 && (
          <DataTable
            label={title}
            columns={columns}
            rows={rows}
            rowId={(row) => row.id}
            currentRowId={open?.id ?? null}
          />
        )
      )}
      {open && (
        <RowForm
          key={open.id ?? ' new'}
          kind={kind}
          bill={bill}
          system={system}
          id={open.id}
          onBill={onBill}
          onClose={close}
        />
      )}
    </Section>
  );
}
