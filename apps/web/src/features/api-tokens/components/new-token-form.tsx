import { isRole, ROLE_MEANINGS, ROLES } from '@scantling/contracts';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import {
  type FormValues,
  type GroupSpec,
  shownNames,
  textOf,
} from '../../../components/record-editor/field-spec.ts';
import { FormFields } from '../../../components/record-editor/form-fields.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useCreateApiToken } from '../api/create-api-token.ts';
import './api-tokens.css';

const GROUPS: readonly GroupSpec[] = [
  {
    fields: [
      { name: 'name', label: 'Name', kind: 'text', isRequired: true, hint: 'Which program uses it' },
      {
        name: 'role',
        label: 'Role',
        kind: 'choice',
        choices: ROLES.map((id) => ({ id, label: id, note: ROLE_MEANINGS[id] })),
      },
    ],
  },
];
const EMPTY: FormValues = { name: '', role: 'read-only' };

/** Makes a token and shows it this once. */
export function NewTokenForm() {
  const [values, setValues] = useState(EMPTY);
  const create = useCreateApiToken();
  const { errorFor, unplaced } = fieldErrors(create.error, shownNames(GROUPS, values));
  return (
    <form
      className="record-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const role = textOf(values, 'role');
        create.mutate(
          { name: textOf(values, 'name'), role: isRole(role) ? role : 'read-only' },
          { onSuccess: () => setValues(EMPTY) },
        );
      }}
    >
      {create.isError && <ErrorNotice error={create.error} errors={unplaced} />}
      <FormFields groups={GROUPS} values={values} onChange={setValues} errorFor={errorFor} />
      <div className="form-acts">
        <Button type="submit" look="main" isPending={create.isPending} pendingText="Making ...">
          Make a token
        </Button>
      </div>
      {create.isSuccess && (
        <div className="fresh-token" role="status">
          <p>
            <strong>Copy the token now; it is not shown again.</strong> Programs send it as “Authorization:
            Bearer ...”.
          </p>
          <TextInput label={create.data.value.apiToken.name} value={create.data.value.token} isReadOnly />
          <Button onPress={() => create.reset()}>I have copied it</Button>
        </div>
      )}
    </form>
  );
}
