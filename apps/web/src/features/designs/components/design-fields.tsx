import type { LengthSystem } from '@scantling/units';
import { FieldGroup, type FieldMessage } from '../../../components/field.tsx';
import type { Difference } from '../../../components/record-editor/field-spec.ts';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';

/** What is said of a design besides its bill. */
export interface DesignDraft {
  readonly code: string;
  readonly name: string;
  readonly description: string;
  readonly unitSystem: LengthSystem;
}

const SYSTEMS = [
  { id: 'metric', label: 'Metric', note: 'lengths in mm' },
  { id: 'imperial', label: 'Inches', note: 'lengths in inches and fractions' },
];

export const DESIGN_FIELDS = ['code', 'name', 'description', 'unitSystem'];

interface DesignFieldsProps {
  readonly draft: DesignDraft;
  readonly onChange: (draft: DesignDraft) => void;
  readonly errorFor: (field: string) => FieldMessage | undefined;
}

export function DesignFields({ draft, onChange, errorFor }: DesignFieldsProps) {
  return (
    <FieldGroup>
      <TextInput
        label="Code"
        hint="Short and your own: BENCH"
        value={draft.code}
        onChange={(code) => onChange({ ...draft, code })}
        error={errorFor('code')}
      />
      <TextInput
        label="Name"
        value={draft.name}
        onChange={(name) => onChange({ ...draft, name })}
        error={errorFor('name')}
      />
      <Select
        label="Lengths"
        choices={SYSTEMS}
        value={draft.unitSystem}
        onChange={(id) => onChange({ ...draft, unitSystem: id === 'imperial' ? 'imperial' : 'metric' })}
        error={errorFor('unitSystem')}
      />
      <TextInput
        label="Description"
        isMultiline
        value={draft.description}
        onChange={(description) => onChange({ ...draft, description })}
        error={errorFor('description')}
      />
    </FieldGroup>
  );
}

/** Where two descriptions of a design differ. */
export function aboutDifferences(mine: DesignDraft, theirs: DesignDraft): readonly Difference[] {
  const named = [
    ['Code', 'code'],
    ['Name', 'name'],
    ['Lengths', 'unitSystem'],
    ['Description', 'description'],
  ] as const;
  return named
    .filter(([, field]) => mine[field] !== theirs[field])
    .map(([label, field]) => ({ label, mine: mine[field] || 'nothing', theirs: theirs[field] || 'nothing' }));
}
