import { Checkbox } from '../checkbox.tsx';
import { ComboBox } from '../combo-box.tsx';
import type { FieldMessage } from '../field.tsx';
import { Select } from '../select.tsx';
import { TextInput, type TextInputProps } from '../text-input.tsx';
import type { CellSpec } from './field-spec.ts';
import './record-editor.css';

interface FormCellProps {
  readonly spec: CellSpec;
  readonly value: string | boolean;
  readonly onChange: (value: string | boolean) => void;
  readonly error: FieldMessage | undefined;
  readonly isReadOnly: boolean;
}

function typeOf(kind: CellSpec['kind']): Pick<TextInputProps, 'type' | 'autoComplete'> {
  if (kind === 'new-password') return { type: 'password', autoComplete: 'new-password' };
  return { type: kind === 'date' || kind === 'email' ? kind : 'text' };
}

/** One control, as its field is declared. */
export function FormCell({ spec, value, onChange, error, isReadOnly }: FormCellProps) {
  if (spec.kind === 'check') {
    return (
      <div className="field-check">
        <Checkbox
          label={spec.label}
          isSelected={value === true}
          onChange={onChange}
          isDisabled={isReadOnly}
        />
        {spec.hint !== undefined && <p className="field-hint">{spec.hint}</p>}
        {error && (
          <p className="field-error">
            <strong>{error.message}</strong> {error.mend}
          </p>
        )}
      </div>
    );
  }
  const text = typeof value === 'string' ? value : '';
  const common = {
    label: spec.label,
    hint: spec.hint,
    error,
    isRequired: spec.isRequired ?? false,
  };
  // Nothing chosen needs no list of what could have been.
  const chosenError = error && text === '' ? { message: 'Nothing is chosen.', mend: 'Choose one.' } : error;
  if (spec.kind === 'choice') {
    return (
      <Select
        {...common}
        error={chosenError}
        choices={spec.choices}
        value={text === '' ? null : text}
        onChange={onChange}
        isDisabled={isReadOnly}
      />
    );
  }
  if (spec.kind === 'search') {
    return (
      <ComboBox
        {...common}
        error={chosenError}
        choices={spec.choices}
        value={text === '' ? null : text}
        onChange={(id) => onChange(id ?? '')}
        isDisabled={isReadOnly}
      />
    );
  }
  return (
    <TextInput
      {...common}
      value={text}
      onChange={onChange}
      isReadOnly={isReadOnly}
      {...typeOf(spec.kind)}
      isMultiline={spec.kind === 'lines'}
      isNumeric={spec.kind === 'decimal'}
      {...(spec.kind === 'decimal' && spec.suffix !== undefined ? { suffix: spec.suffix } : {})}
    />
  );
}
