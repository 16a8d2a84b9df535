import { useMemo, useState } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { ComboBox } from '../../../components/combo-box.tsx';
import { FieldGroup, type FieldMessage } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { Section } from '../../../components/sheet.tsx';
import { Switch } from '../../../components/switch.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import type { FieldErrors } from '../../../lib/field-errors.ts';
import { leafSuffix, readLeaf } from '../../figures/leaf-text.ts';
import { piecesWords } from './class-rows.ts';
import { estimatesIn } from './estimate-words.ts';
import {
  type GivenEstimate,
  type RiskSearch,
  USUAL_PERCENTILE,
  USUAL_SAMPLES,
  USUAL_SEED,
} from './risk-search.ts';
import { inputChoices } from './solve-question.ts';
import type { AskedSheet } from './use-asked-sheet.ts';
import './question.css';

export type RiskChanges = { readonly [K in keyof RiskSearch]?: RiskSearch[K] | undefined };

interface RiskFormProps {
  readonly asked: AskedSheet;
  readonly search: RiskSearch;
  readonly errorFor: FieldErrors['errorFor'];
  readonly onAsk: (changes: RiskChanges) => void;
}

/** How the runs are made; what is uncertain is given beside. */
export function RiskForm({ asked, search, errorFor, onAsk }: RiskFormProps) {
  const { worked, column, now } = asked;
  return (
    <Section title="The runs" note="each run draws every uncertain value anew and works the whole sheet out">
      <FieldGroup>
        {worked.columns.length > 1 && (
          <Select
            label="For"
            choices={worked.columns.map(({ quantity }) => ({
              id: String(quantity),
              label: piecesWords(quantity),
            }))}
            value={String(column.quantity)}
            onChange={(pieces) => onAsk({ pieces })}
          />
        )}
        <Typed
          label="Price that is quoted"
          suffix={now.currency ?? ''}
          hint="empty: the net price of the sheet"
          value={search.price ?? ''}
          error={errorFor('quoted.price')}
          onTake={(price) => onAsk({ price })}
        />
        <Typed
          label="To be sure in"
          suffix="% of runs"
          hint="what contingency has to cover"
          value={search.percentile ?? USUAL_PERCENTILE}
          error={errorFor('percentile')}
          onTake={(percentile) => onAsk({ percentile })}
        />
        <Select
          label="Between low and high, values lie"
          choices={[
            { id: 'pert', label: 'mostly near the likely one', note: 'Beta-PERT, lambda 4' },
            { id: 'triangular', label: 'less and less away from it', note: 'triangular' },
          ]}
          value={search.shape === 'triangular' ? 'triangular' : 'pert'}
          onChange={(id) => onAsk({ shape: id === 'triangular' ? id : undefined })}
          error={errorFor('shape')}
        />
        <Typed
          label="Runs"
          hint="100 to 100000"
          value={search.samples ?? USUAL_SAMPLES}
          error={errorFor('samples')}
          onTake={(samples) => onAsk({ samples })}
        />
        <Typed
          label="Seed"
          hint="the same seed gives the same answer"
          value={search.seed ?? USUAL_SEED}
          error={errorFor('seed')}
          onTake={(seed) => onAsk({ seed })}
        />
      </FieldGroup>
      <Switch
        label="Hours go together: when one step takes long, the others do too (one common factor)"
        isSelected={search.alone === undefined}
        onChange={(isOn) => onAsk({ alone: isOn ? undefined : 'yes' })}
      />
    </Section>
  );
}

interface TypedProps {
  readonly label: string;
  readonly value: string;
  readonly suffix?: string;
  readonly hint: string;
  readonly error: FieldMessage | undefined;
  readonly onTake: (value: string | undefined) => void;
}

/** Taken on Enter and on leaving. */
function Typed({ label, value, suffix, hint, error, onTake }: TypedProps) {
  const [typed, setTyped] = useState(value);
  const take = (): void => {
    if (typed.trim() !== value) onTake(typed.trim() === '' ? undefined : typed.trim());
  };
  return (
    <TextInput
      label={label}
      isNumeric
      hint={hint}
      {...(suffix === undefined ? {} : { suffix })}
      value={typed}
      onChange={setTyped}
      onBlur={take}
      onKeyDown={(event) => {
        if (event.key === 'Enter') take();
        else event.continuePropagation();
      }}
      error={error}
    />
  );
}

const NOTHING_TYPED = { low: '', likely: '', high: '', group: '' };
const POINTS = ['low', 'likely', 'high'] as const;

interface AddEstimateProps {
  readonly asked: AskedSheet;
  readonly given: readonly GivenEstimate[];
  readonly onGive: (estimates: readonly GivenEstimate[]) => void;
}

/** Least, likely and greatest of one more input, found by typing. */
export function AddEstimate({ asked, given, onGive }: AddEstimateProps) {
  const { locale } = useLocale();
  const { worked, sheet, result } = asked;
  const system = sheet.unitSystem;
  const [input, setInput] = useState<string | null>(null);
  const [typed, setTyped] = useState(NOTHING_TYPED);
  const [faults, setFaults] = useState<{ readonly [name: string]: FieldMessage }>({});
  const choices = useMemo(() => {
    const inEstimates = new Set(
      estimatesIn(worked.figures).flatMap(({ low, likely, high }) => [low.id, likely.id, high.id]),
    );
    return inputChoices(worked.figures, result.id, { system, locale }).filter(
      ({ id }) => !inEstimates.has(id),
    );
  }, [worked.figures, result.id, system, locale]);
  const leaf = input === null ? undefined : worked.figures[input];
  const add = (): void => {
    if (leaf === undefined) {
      setFaults({ input: { message: 'is missing', mend: 'Choose one.' } });
      return;
    }
    const read = POINTS.map((name) => [name, readLeaf(leaf, typed[name], system)] as const);
    const problems = read.flatMap(([name, point]) =>
      'problem' in point ? [[name, point.problem] as const] : [],
    );
    setFaults(Object.fromEntries(problems));
    const [low, likely, high] = read.map(([, point]) => ('value' in point ? point.value : null));
    if (!low || !likely || !high) return;
    const group = typed.group.trim();
    onGive([
      ...given.filter(({ id }) => id !== leaf.id),
      { id: leaf.id, low, likely, high, ...(group === '' ? {} : { group }) },
    ]);

    setInput(null);
    setTyped(NOTHING_TYPED);
  };
  const suffix = leaf === undefined ? '' : leafSuffix(leaf, system);
  return (
    <form
      className="question-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <FieldGroup legend="One more value that is not certain">
        <ComboBox
          label="Input"
          choices={choices}
          value={input}
          onChange={setInput}
          emptyText="No input of the cost has that name"
          error={faults.input}
        />
        {POINTS.map((name) => (
          <TextInput
            key={name}
            label={{ low: 'At the least', likely: 'Likely', high: 'At the most' }[name]}
            isNumeric
            suffix={suffix}
            value={typed[name]}
            onChange={(text) => setTyped({ ...typed, [name]: text })}
            error={faults[name]}
          />
        ))}
        <TextInput
          label="Moves together with"
          hint="a name; values of one name rise and fall together. Empty: by itself, hours with all hours"
          value={typed.group}
          onChange={(group) => setTyped({ ...typed, group })}
        />
      </FieldGroup>
      <div className="question-foot">
        <Button type="submit">Add it</Button>
      </div>
    </form>
  );
}
