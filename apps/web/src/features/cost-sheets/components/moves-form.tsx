import { useState } from 'react';
import { FieldGroup } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { Section } from '../../../components/sheet.tsx';
import { Switch } from '../../../components/switch.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import type { FieldErrors } from '../../../lib/field-errors.ts';
import { QuestionFields } from './question-fields.tsx';
import type { SensitivitySearch } from './question-search.ts';
import type { AskedSheet } from './use-asked-sheet.ts';

const USUAL = ['5', '10', '20'];
const OTHER = 'other';

interface MovesFormProps {
  readonly asked: AskedSheet;
  readonly move: string;
  readonly usesRanges: boolean;
  readonly hasRanges: boolean;
  readonly errorFor: FieldErrors['errorFor'];
  readonly onAsk: (changes: { readonly [K in keyof SensitivitySearch]?: string | undefined }) => void;
}

/** Which result is looked at, and how far each value moves. */
export function MovesForm({ asked, move, usesRanges, hasRanges, errorFor, onAsk }: MovesFormProps) {
  const [isOther, setIsOther] = useState(!USUAL.includes(move));
  const [typed, setTyped] = useState(move);
  const take = (): void => {
    if (typed.trim() !== '' && typed.trim() !== move) onAsk({ move: typed.trim() });
  };
  return (
    <Section title="The question">
      <FieldGroup>
        <QuestionFields
          asked={asked}
          label="What moves the"
          errorFor={errorFor}
          onResult={(result) => onAsk({ result })}
          onPieces={(pieces) => onAsk({ pieces })}
        />
        <Select
          label="Each value up and down by"
          choices={[...USUAL.map((id) => ({ id, label: `${id} %` })), { id: OTHER, label: 'another share' }]}
          value={isOther ? OTHER : move}
          onChange={(id) => {
            setIsOther(id === OTHER);
            if (id === OTHER) return;
            setTyped(id);
            onAsk({ move: id });
          }}
          error={isOther ? undefined : errorFor('move')}
        />
        {isOther && (
          <TextInput
            label="By"
            isNumeric
            suffix="%"
            hint="from 0 to 100; taken on Enter"
            value={typed}
            onChange={setTyped}
            onBlur={take}
            onKeyDown={(event) => {
              if (event.key === 'Enter') take();
              else event.continuePropagation();
            }}
            error={errorFor('move')}
          />
        )}
      </FieldGroup>
      {hasRanges && (
        <Switch
          label="Times with a low and a high estimate move between these two"
          isSelected={usesRanges}
          onChange={(isOn) => onAsk({ ranges: isOn ? undefined : 'share' })}
        />
      )}
    </Section>
  );
}
