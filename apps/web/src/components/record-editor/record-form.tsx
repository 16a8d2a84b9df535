import { useState } from 'react';
import type { ApiAnswer } from '../../lib/api-client.ts';
import { ApiProblem } from '../../lib/api-problem.ts';
import { fieldErrors } from '../../lib/field-errors.ts';
import { type RecordCalls, useSaveRecord } from '../../lib/record-calls.ts';
import { Button } from '../button.tsx';
import { ErrorNotice } from '../notices.tsx';
import { ChangeClash } from './change-clash.tsx';
import { differences, type FormValues, type GroupSpec, shownNames } from './field-spec.ts';
import { FormFields } from './form-fields.tsx';

export interface RecordFormProps<Value extends { readonly id: string }> {
  readonly calls: RecordCalls<Value>;
  /** Null: a new record. */
  readonly id: string | null;
  /** The record as read, with its ETag; null for a new one. */
  readonly read: ApiAnswer<Value> | null;
  /** Reads the record afresh after a clash. */
  readonly readAgain?: () => Promise<ApiAnswer<Value> | undefined>;
  readonly groups: readonly GroupSpec[] | ((values: FormValues) => readonly GroupSpec[]);
  readonly toValues: (record: Value | null) => FormValues;
  readonly toInput: (values: FormValues) => Readonly<Record<string, unknown>>;
  readonly onSaved: (record: Value) => void;
  readonly isReadOnly?: boolean;
  /** At the far end of the line the save button stands on. */
  readonly acts?: React.ReactNode;
}

/** A record's fields, saved whole. What was typed stays through every refusal. */
export function RecordForm<Value extends { readonly id: string }>(props: RecordFormProps<Value>) {
  const { toValues, read, isReadOnly = false } = props;
  const [base, setBase] = useState(() => ({
    etag: read?.etag ?? null,
    values: toValues(read?.value ?? null),
  }));
  const [values, setValues] = useState(base.values);
  const [theirs, setTheirs] = useState<ApiAnswer<Value> | null>(null);
  const save = useSaveRecord(props.calls, props.id);
  const groups = typeof props.groups === 'function' ? props.groups(values) : props.groups;
  const isClash = save.error instanceof ApiProblem && save.error.status === 412;
  const { errorFor, unplaced } = fieldErrors(save.error, shownNames(groups, values));
  const isChanged = JSON.stringify(values) !== JSON.stringify(base.values);

  const onFailure = async (error: Error): Promise<void> => {
    if (!(error instanceof ApiProblem) || error.status !== 412) return;
    setTheirs((await props.readAgain?.()) ?? null);
  };
  return (
    <form
      className="record-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save.mutate(
          { body: props.toInput(values), etag: base.etag },
          {
            onSuccess: (answer) => {
              const saved = toValues(answer.value);
              setBase({ etag: answer.etag, values: saved });
              setValues(saved);
              props.onSaved(answer.value);
            },
            onError: (error) => void onFailure(error),
          },
        );
      }}
    >
      {theirs !== null && (
        <ChangeClash
          differences={differences(groups, values, toValues(theirs.value))}
          onTakeTheirs={() => {
            const now = toValues(theirs.value);
            setBase({ etag: theirs.etag, values: now });
            setValues(now);
            setTheirs(null);
            save.reset();
          }}
          onKeepMine={() => {
            setBase({ etag: theirs.etag, values: toValues(theirs.value) });
            setTheirs(null);
            save.reset();
          }}
        />
      )}
      {save.isError && !(isClash && theirs !== null) && <ErrorNotice error={save.error} errors={unplaced} />}
      <FormFields
        groups={groups}
        values={values}
        onChange={(next) => {
          setValues(next);
          if (save.isSuccess) save.reset();
        }}
        errorFor={errorFor}
        isReadOnly={isReadOnly}
      />
      <div className="form-acts">
        {isReadOnly ? (
          <span className="field-hint">Your role reads this and does not change it.</span>
        ) : (
          <Button type="submit" look="main" isPending={save.isPending} pendingText="Saving ...">
            Save
          </Button>
        )}
        {isChanged && props.id !== null && (
          <Button onPress={() => setValues(base.values)}>Back to what is saved</Button>
        )}
        <span role="status" className="form-said">
          {save.isSuccess ? 'Saved' : ''}
        </span>
        {props.acts && <span className="form-remove">{props.acts}</span>}
      </div>
    </form>
  );
}
