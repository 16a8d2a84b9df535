import { fieldErrors } from '../../lib/field-errors.ts';
import { Button } from '../button.tsx';
import { ErrorNotice } from '../notices.tsx';
import { type FormValues, type GroupSpec, shownNames } from './field-spec.ts';
import { FormFields } from './form-fields.tsx';
import './record-editor.css';

interface EntryFormProps {
  readonly groups: readonly GroupSpec[];
  readonly values: FormValues;
  readonly onChange: (values: FormValues) => void;
  readonly onEnter: () => void;
  /** The call that enters it. */
  readonly entry: { readonly isPending: boolean; readonly error: Error | null };
  /** "Enter the rate" */
  readonly act: string;
  readonly pendingText: string;
  /** What is said beside the button once it is entered. */
  readonly said?: string;
  /** Below the button. */
  readonly children?: React.ReactNode;
}

/** Enters one thing more into the list it stands beside; nothing of it is changed later. */
export function EntryForm(props: EntryFormProps) {
  const { groups, values, entry } = props;
  const { errorFor, unplaced } = fieldErrors(entry.error, shownNames(groups, values));
  return (
    <form
      className="record-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        props.onEnter();
      }}
    >
      {entry.error !== null && <ErrorNotice error={entry.error} errors={unplaced} />}
      <FormFields groups={groups} values={values} onChange={props.onChange} errorFor={errorFor} />
      <div className="form-acts">
        <Button type="submit" look="main" isPending={entry.isPending} pendingText={props.pendingText}>
          {props.act}
        </Button>
        <span role="status" className="form-said">
          {props.said ?? ''}
        </span>
      </div>
      {props.children}
    </form>
  );
}
