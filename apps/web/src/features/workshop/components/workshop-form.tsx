import { editWorkshop, type Workshop } from '@scantling/contracts';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { ChangeClash } from '../../../components/record-editor/change-clash.tsx';
import { differences, shownNames } from '../../../components/record-editor/field-spec.ts';
import { FormFields } from '../../../components/record-editor/form-fields.tsx';
import type { ApiAnswer } from '../../../lib/api-client.ts';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { useEditWorkshop } from '../api/edit-workshop.ts';
import { workshopGroups } from './workshop-groups.ts';
import { workshopInput, workshopValues } from './workshop-values.ts';

interface WorkshopFormProps {
  readonly read: ApiAnswer<Workshop>;
  /** Reads the record afresh after a clash. */
  readonly readAgain: () => Promise<ApiAnswer<Workshop> | undefined>;
}

/** What the workshop decides once for all its cost sheets, saved whole. */
export function WorkshopForm({ read, readAgain }: WorkshopFormProps) {
  const [base, setBase] = useState(read);
  const [values, setValues] = useState(() => workshopValues(read.value));
  const [theirs, setTheirs] = useState<ApiAnswer<Workshop> | null>(null);
  const mayEdit = useMayCall(editWorkshop);
  const save = useEditWorkshop();
  const groups = workshopGroups(base.value.settings, values);
  const { errorFor, unplaced } = fieldErrors(save.error, shownNames(groups, values));
  const isChanged = JSON.stringify(values) !== JSON.stringify(workshopValues(base.value));
  const take = (answer: ApiAnswer<Workshop>): void => {
    setBase(answer);
    setValues(workshopValues(answer.value));
    setTheirs(null);
  };
  const onFailure = async (error: Error): Promise<void> => {
    if (error instanceof ApiProblem && error.status === 412) setTheirs((await readAgain()) ?? null);
  };
  return (
    <form
      className="record-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save.mutate(
          { body: workshopInput(values, base.value.settings), etag: base.etag },
          { onSuccess: take, onError: (error) => void onFailure(error) },
        );
      }}
    >
      {theirs !== null && (
        <ChangeClash
          differences={differences(groups, values, workshopValues(theirs.value))}
          onTakeTheirs={() => {
            take(theirs);
            save.reset();
          }}
          onKeepMine={() => {
            setBase(theirs);
            setTheirs(null);
            save.reset();
          }}
        />
      )}
      {save.isError && theirs === null && <ErrorNotice error={save.error} errors={unplaced} />}
      <FormFields
        groups={groups}
        values={values}
        onChange={(next) => {
          setValues(next);
          if (save.isSuccess) save.reset();
        }}
        errorFor={errorFor}
        isReadOnly={!mayEdit}
      />
      <div className="form-acts">
        {mayEdit ? (
          <Button type="submit" look="main" isPending={save.isPending} pendingText="Saving ...">
            Save
          </Button>
        ) : (
          <span className="field-hint">Your role reads this and does not change it.</span>
        )}
        {isChanged && (
          <Button onPress={() => setValues(workshopValues(base.value))}>Back to what is saved</Button>
        )}
        <span role="status" className="form-said">
          {save.isSuccess ? 'Saved' : ''}
        </span>
      </div>
    </form>
  );
}
