import { unitWords } from '@scantling/units';
import { useMemo, useState } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { ComboBox } from '../../../components/combo-box.tsx';
import { FieldGroup, type FieldMessage } from '../../../components/field.tsx';
import { Section } from '../../../components/sheet.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import type { FieldErrors } from '../../../lib/field-errors.ts';
import { leafSuffix, readLeaf } from '../../figures/leaf-text.ts';
import { QuestionFields } from './question-fields.tsx';
import type { SolveSearch } from './question-search.ts';
import { inputChoices, readTarget } from './solve-question.ts';
import type { AskedSheet } from './use-asked-sheet.ts';
import './question.css';

interface SolveFormProps {
  readonly asked: AskedSheet;
  readonly search: SolveSearch;
  readonly isHeld: boolean;
  readonly errorFor: FieldErrors['errorFor'];
  readonly onAsk: (changes: { readonly [K in keyof SolveSearch]?: string | undefined }) => void;
}

type Faults = { readonly [K in 'input' | 'target' | 'low' | 'high']?: FieldMessage };

/** The question as a sentence: what must this input be, so that that result comes to so much. */
export function SolveForm({ asked, search, isHeld, errorFor, onAsk }: SolveFormProps) {
  const { locale } = useLocale();
  const { worked, result, now } = asked;
  const system = asked.sheet.unitSystem;
  const [input, setInput] = useState(search.input ?? null);
  const [target, setTarget] = useState(search.target ?? '');
  const [low, setLow] = useState(search.low ?? '');
  const [high, setHigh] = useState(search.high ?? '');
  const [faults, setFaults] = useState<Faults>({});
  const choices = useMemo(
    () => inputChoices(worked.figures, result.id, { system, locale }),
    [worked.figures, result.id, system, locale],
  );
  const leaf = input === null ? undefined : worked.figures[input];
  const isShare = isHeld || result.name === 'margin';
  const suffix = isShare ? '%' : [now.currency, unitWords(now.unit)].filter(Boolean).join(' ');
  const submit = (): void => {
    const read = readTarget(target, isShare);
    const ends = [low, high].map((typed) =>
      typed.trim() === '' || leaf === undefined ? null : readLeaf(leaf, typed, system),
    );
    const problems: Faults = {
      ...(leaf === undefined ? { input: { message: 'is missing', mend: 'Choose one.' } } : {}),
      ...('problem' in read ? { target: read.problem } : {}),
      ...(ends[0] && 'problem' in ends[0] ? { low: ends[0].problem } : {}),
      ...(ends[1] && 'problem' in ends[1] ? { high: ends[1].problem } : {}),
    };
    setFaults(problems);
    if (Object.keys(problems).length > 0) return;
    const end = (typed: string) => (typed.trim() === '' ? undefined : typed.trim());
    onAsk({ input: input ?? undefined, target: target.trim(), low: end(low), high: end(high) });
  };
  const end = leaf === undefined ? '' : leafSuffix(leaf, system);
  return (
    <Section title="The question" note="one input looked for, all else as it stands">
      <form
        className="question-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          submit();
        }}
      >
        <FieldGroup>
          <ComboBox
            label="What must this input be"
            choices={choices}
            value={input}
            onChange={setInput}
            emptyText="No input of this result has that name"
            error={faults.input ?? errorFor('leaf')}
          />
          <QuestionFields
            asked={asked}
            label="so that the"
            isHeld={isHeld}
            errorFor={errorFor}
            onResult={(name) => onAsk({ result: name, target: undefined, input: input ?? undefined })}
            onPieces={(pieces) => onAsk({ pieces, input: input ?? undefined })}
          />
          <TextInput
            label="comes to"
            isNumeric
            {...(suffix === '' ? {} : { suffix })}
            value={target}
            onChange={setTarget}
            error={faults.target ?? errorFor('target.value') ?? errorFor('target')}
          />
        </FieldGroup>
        <details open={low !== '' || high !== '' || errorFor('low') !== undefined}>
          <summary>Look only between two values</summary>
          <FieldGroup>
            <TextInput
              label="From"
              isNumeric
              suffix={end}
              value={low}
              onChange={setLow}
              error={faults.low ?? errorFor('low')}
            />
            <TextInput
              label="To"
              isNumeric
              suffix={end}
              value={high}
              onChange={setHigh}
              error={faults.high ?? errorFor('high')}
            />
          </FieldGroup>
        </details>
        <div className="question-foot">
          <Button type="submit" look="main">
            Find it
          </Button>
        </div>
      </form>
    </Section>
  );
}
