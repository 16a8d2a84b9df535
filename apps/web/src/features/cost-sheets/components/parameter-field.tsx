import type { Parameter } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import { useState } from 'react';
import type { FieldMessage } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import type { DesignRevision } from '../api/get-design-revision.ts';
import { awayWords, baseValue, type DesignChoice, readValue, valueText } from './design-choice.ts';

interface ParameterFieldProps {
  readonly parameter: Parameter;
  /** As drawn. */
  readonly drawn: string;
  readonly drawing: DesignRevision;
  readonly choice: DesignChoice;
  readonly system: LengthSystem;
  readonly error: FieldMessage | undefined;
  readonly onValue: (value: string) => void;
}

/** One parameter: its value here, what was drawn and how far it is from it. Taken on Enter and on leaving the field. */
export function ParameterField({
  parameter,
  drawn,
  drawing,
  choice,
  system,
  error,
  onValue,
}: ParameterFieldProps) {
  const base = baseValue(drawing, parameter, choice.variant) ?? drawn;
  const value = choice.parameterValues[parameter.id] ?? base;
  const [typed, setTyped] = useState(() => valueText(parameter, value, system));
  const [fault, setFault] = useState<FieldMessage | undefined>(undefined);
  const { label, kind, choices = [] } = parameter;
  const away = awayWords(parameter, value, drawn, system);
  const hint = `Drawn ${valueText(parameter, drawn, system)}${away === null ? '' : `, here ${away}`}`;
  if (kind === 'material') {
    const codes = [...new Set([drawn, value, ...choices])];
    return (
      <Select
        label={label}
        hint={hint}
        error={error}
        choices={codes.map((id) => ({ id, label: id }))}
        value={value}
        onChange={onValue}
      />
    );
  }
  const take = (): void => {
    const read = readValue(parameter, typed, system);
    setFault('error' in read ? read.error : undefined);
    if (!('error' in read) && read.value !== value) onValue(read.value);
  };
  return (
    <TextInput
      label={label}
      hint={hint}
      error={fault ?? error}
      isNumeric
      value={typed}
      onChange={setTyped}
      onBlur={take}
      onKeyDown={(event) => {
        if (event.key === 'Enter') take();
      }}
    />
  );
}
