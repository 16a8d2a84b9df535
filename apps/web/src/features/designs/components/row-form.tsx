import type { LengthSystem } from '@scantling/units';
import { useEffect, useRef, useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Checkbox } from '../../../components/checkbox.tsx';
import { ComboBox } from '../../../components/combo-box.tsx';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import { FieldGroup, type FieldMessage } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { type BillChoices, choicesOf } from './bill-columns.ts';
import { BILL_FIELDS, type BillField, type BillKind, KIND_WORDS } from './bill-fields.ts';
import { type RowCells, unitOf } from './bill-text.ts';
import './design.css';
import '../../../components/sheet.css';

interface RowFieldProps {
  readonly field: BillField;
  readonly system: LengthSystem;
  readonly from: BillChoices;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly error: FieldMessage | undefined;
}

const NOTHING = { id: '', label: 'none' };

function RowField({ field, system, from, value, onChange, error }: RowFieldProps) {
  const { label, hint, form, choicesFrom } = field;
  const choices = choicesOf(field, from);
  if (form === 'yes-no') {
    return (
      <Checkbox label={label} isSelected={value === 'yes'} onChange={(is) => onChange(is ? 'yes' : '')} />
    );
  }
  if (choices !== undefined && form !== 'ids') {
    const shared = { label, hint, error };
    // A code that is in no list stays visible, so that it can be seen and mended.
    const offered =
      value === '' || choices.some(({ id }) => id === value)
        ? choices
        : [{ id: value, label: value }, ...choices];
    if (choicesFrom !== undefined) {
      const onPick = (id: string | null): void => onChange(id ?? '');
      return <ComboBox {...shared} choices={offered} value={value === '' ? null : value} onChange={onPick} />;
    }
    const given = field.isRequired ? offered : [NOTHING, ...offered];
    return (
      <Select
        {...shared}
        choices={given}
        value={value === '' && field.isRequired ? null : value}
        onChange={onChange}
      />
    );
  }
  const unit = unitOf(field, system);
  return (
    <TextInput
      label={label}
      hint={hint}
      error={error}
      {...(unit === '' ? {} : { suffix: unit })}
      value={value}
      onChange={onChange}
    />
  );
}

export interface RowFormProps {
  readonly kind: BillKind;
  readonly row: GridRow;
  readonly system: LengthSystem;
  readonly choices: BillChoices;
  readonly errors: ReadonlyMap<string, FieldMessage> | undefined;
  readonly onCells: (cells: RowCells) => void;
  readonly onClose: () => void;
}

/** All values of one row under its grid: edge band, veneer and what else is rare. Taken as one step. */
export function RowForm({ kind, row, system, choices, errors, onCells, onClose }: RowFormProps) {
  const [cells, setCells] = useState(row.cells);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    const cameFrom = document.activeElement;
    form.current?.querySelector('input')?.focus();
    return () => {
      if (cameFrom instanceof HTMLElement && cameFrom.isConnected) cameFrom.focus();
    };
  }, []);
  const isChanged = cells !== row.cells;
  return (
    <form
      ref={form}
      className="row-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (isChanged) onCells(cells);
        onClose();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <FieldGroup legend={`All values of ${row.cells.name || `this ${KIND_WORDS[kind].one}`}`}>
        {BILL_FIELDS[kind].map((field) => (
          <RowField
            key={field.path}
            field={field}
            system={system}
            from={choices}
            value={cells[field.path] ?? ''}
            onChange={(text) => setCells({ ...cells, [field.path]: text })}
            error={cells[field.path] === row.cells[field.path] ? errors?.get(field.path) : undefined}
          />
        ))}
      </FieldGroup>
      <div className="sheet-actions">
        <Button type="submit">{isChanged ? 'Take the changes' : 'Close'}</Button>
        {isChanged && (
          <Button look="quiet" onPress={onClose}>
            Leave it as it was
          </Button>
        )}
      </div>
    </form>
  );
}
