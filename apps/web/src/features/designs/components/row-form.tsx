import type { Bill } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import { useEffect, useRef, useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Checkbox } from '../../../components/checkbox.tsx';
import { FieldGroup, type FieldMessage } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import type { FieldError } from '../../../lib/api-problem.ts';
import { putRow, removeRow } from './bill-edits.ts';
import { BILL_FIELDS, type BillField, type BillKind, KIND_WORDS } from './bill-fields.ts';
import { type RowDraft, rowDraft } from './bill-text.ts';
import { readRow } from './read-row.ts';
import './design.css';

interface RowFieldProps {
  readonly field: BillField;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly error: FieldMessage | undefined;
}

const NOTHING = { id: '', label: 'none' };

function RowField({ field, value, onChange, error }: RowFieldProps) {
  const { label, hint, form, choices } = field;
  if (form === 'yes-no') {
    return (
      <Checkbox label={label} isSelected={value === 'yes'} onChange={(is) => onChange(is ? 'yes' : '')} />
    );
  }
  if (choices !== undefined) {
    const given = choices.map((id) => ({ id, label: id.replaceAll('-', ' ') }));
    return (
      <Select
        label={label}
        hint={hint}
        error={error}
        choices={field.isRequired ? given : [NOTHING, ...given]}
        value={value === '' && field.isRequired ? null : value}
        onChange={onChange}
      />
    );
  }
  const isNumeric = form === 'count' || form === 'number' || form === 'percent';
  const suffix = form === 'percent' ? '%' : field.suffix;
  return (
    <TextInput
      label={label}
      hint={hint}
      error={error}
      isNumeric={isNumeric}
      {...(suffix === undefined ? {} : { suffix })}
      value={value}
      onChange={onChange}
    />
  );
}

export interface RowFormProps {
  readonly kind: BillKind;
  readonly bill: Bill;
  readonly system: LengthSystem;
  /** The row that is changed; null: a new one. */
  readonly id: string | null;
  readonly onBill: (bill: Bill) => void;
  readonly onClose: () => void;
}

/** One row of the bill, under its table. Nothing leaves the page before the whole design is saved. */
export function RowForm({ kind, bill, system, id, onBill, onClose }: RowFormProps) {
  const fields = BILL_FIELDS[kind];
  const row = bill[kind].find((one) => one.id === id);
  const [draft, setDraft] = useState<RowDraft>(() => (row ? rowDraft(row, fields, system) : {}));
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    const cameFrom = document.activeElement;
    form.current?.querySelector('input')?.focus();
    return () => {
      if (cameFrom instanceof HTMLElement && cameFrom.isConnected) cameFrom.focus();
    };
  }, []);
  const take = (): void => {
    const read = readRow(kind, draft, system);
    const taken = bill[kind].some((one) => one.id !== id && one.id === draft.id?.trim());
    const clash = { field: 'id', message: 'Id is taken by another row.', mend: 'Choose another id.' };
    const found = taken ? [...read.errors, clash] : read.errors;
    setErrors(found);
    if (read.bill === null || found.length > 0) return;
    onBill(putRow(bill, kind, id, read.bill));
    onClose();
  };
  const { one } = KIND_WORDS[kind];
  return (
    <form
      ref={form}
      className="row-form"
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <FieldGroup legend={row ? `Change ${one} ${row.name}` : `New ${one}`}>
        {fields.map((field) => (
          <RowField
            key={field.path}
            field={field}
            value={draft[field.path] ?? ''}
            onChange={(text) => setDraft({ ...draft, [field.path]: text })}
            error={errors.find((error) => error.field === field.path)}
          />
        ))}
      </FieldGroup>
      <div className="sheet-actions">
        <Button type="submit">{row ? 'Change the row' : 'Add the row'}</Button>
        <Button look="quiet" onPress={onClose}>
          Leave it
        </Button>
        {row && (
          <Button
            look="danger"
            onPress={() => {
              onBill(removeRow(bill, kind, row.id));
              onClose();
            }}
          >
            Remove the row
          </Button>
        )}
      </div>
    </form>
  );
}
