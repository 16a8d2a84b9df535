import type { OverallSizeText } from '@scantling/contracts';
import type { LengthSystem } from '@scantling/units';
import { FieldGroup, type FieldMessage } from '../../../components/field.tsx';
import type { Difference } from '../../../components/record-editor/field-spec.ts';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { asTyped, OverallSizeFields } from './overall-size-fields.tsx';

/** What is said of a design besides its bill. */
export interface DesignDraft {
  readonly code: string;
  readonly name: string;
  readonly description: string;
  readonly unitSystem: LengthSystem;
  /** In mm, or as typed where it cannot be read. */
  readonly overallSize: OverallSizeText | null;
}

const SYSTEMS = [
  { id: 'metric', label: 'Metric', note: 'lengths in mm' },
  { id: 'imperial', label: 'Inches', note: 'lengths in inches and fractions' },
];

export const DESIGN_FIELDS = [
  'code',
  'name',
  'description',
  'unitSystem',
  'overallSize.length',
  'overallSize.width',
  'overallSize.height',
];

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
      <OverallSizeFields
        size={draft.overallSize}
        unitSystem={draft.unitSystem}
        onChange={(overallSize) => onChange({ ...draft, overallSize })}
        errorFor={errorFor}
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
  const size = (draft: DesignDraft): string =>
    draft.overallSize === null
      ? ''
      : Object.values(draft.overallSize)
          .map((mm) => asTyped(mm, draft.unitSystem))
          .join(' × ');
  return [
    ...named.map(([label, field]) => ({ label, mine: mine[field], theirs: theirs[field] })),
    { label: 'Overall size', mine: size(mine), theirs: size(theirs) },
  ]
    .filter((one) => one.mine !== one.theirs)
    .map((one) => ({ ...one, mine: one.mine || 'nothing', theirs: one.theirs || 'nothing' }));
}
