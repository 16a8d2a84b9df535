import { createScenario, type Scenario } from '@scantling/contracts';
import type { FigureTable } from '@scantling/figures';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { notify } from '../../../components/toast.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { useCreateScenario } from '../api/create-scenario.ts';
import { useEditScenario } from '../api/edit-scenario.ts';
import { scenarioChanges } from './scenario-changes.ts';
import type { TriedValues } from './tried-values.ts';
import './trial.css';

interface KeepScenarioProps {
  readonly sheetId: string;
  readonly table: FigureTable;
  readonly values: TriedValues;
  /** The scenario the values came from, if they did: it may take the place. */
  readonly from: Scenario | undefined;
  readonly onKept: (scenario: Scenario) => void;
}

/** Keeps the values tried on the sheet under a name. */
export function KeepScenario({ sheetId, table, values, from, onKept }: KeepScenarioProps) {
  const [isOpen, setIsOpen] = useState(false);
  const [name, setName] = useState('');
  const [note, setNote] = useState('');
  const create = useCreateScenario(sheetId);
  const edit = useEditScenario();
  const canKeep = useMayCall(createScenario);
  if (!canKeep) return null;
  const { errorFor, unplaced } = fieldErrors(create.error, ['name', 'note']);
  const kept = (scenario: Scenario, words: string): void => {
    setIsOpen(false);
    notify(words);
    onKept(scenario);
  };
  const changes = scenarioChanges(values, table, from);
  if (!isOpen) {
    return (
      <>
        <Button onPress={() => setIsOpen(true)}>Keep as a scenario</Button>
        {from !== undefined && (
          <Button
            isPending={edit.isPending}
            pendingText="Keeping ..."
            onPress={() =>
              edit.mutate(
                { id: from.id, version: from.version, body: { name: from.name, note: from.note, changes } },
                { onSuccess: ({ value }) => kept(value, `“${value.name}” has these values now.`) },
              )
            }
          >
            Change “{from.name}” to these
          </Button>
        )}
        {edit.isError && <ErrorNotice error={edit.error} />}
      </>
    );
  }
  return (
    <form
      className="keep-scenario"
      aria-label="Keep as a scenario"
      onSubmit={(event) => {
        event.preventDefault();
        create.mutate(
          { name, note, changes },
          { onSuccess: ({ value }) => kept(value, `“${value.name}” is kept.`) },
        );
      }}
    >
      {create.isError && errorFor('name') === undefined && (
        <ErrorNotice error={create.error} errors={unplaced} />
      )}
      {/* The act was just asked for: the first field is where one goes on. */}
      <TextInput label="Name" value={name} onChange={setName} error={errorFor('name')} autoFocus />
      <TextInput
        label="Note"
        value={note}
        onChange={setNote}
        error={errorFor('note')}
        hint="What it is about"
      />
      <div className="trial-buttons">
        <Button onPress={() => setIsOpen(false)}>Not now</Button>
        <Button type="submit" look="main" isPending={create.isPending} pendingText="Keeping ...">
          Keep the scenario
        </Button>
      </div>
    </form>
  );
}
