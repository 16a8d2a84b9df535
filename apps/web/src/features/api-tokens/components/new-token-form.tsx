import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { EntryForm } from '../../../components/record-editor/entry-form.tsx';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import { ROLE_FIELD, roleOf } from '../../../components/record-editor/role-field.ts';
import { TextInput } from '../../../components/text-input.tsx';
import { useCreateApiToken } from '../api/create-api-token.ts';
import './api-tokens.css';

const GROUPS: readonly GroupSpec[] = [
  {
    fields: [
      { name: 'name', label: 'Name', kind: 'text', isRequired: true, hint: 'Which program uses it' },
      ROLE_FIELD,
    ],
  },
];
const EMPTY: FormValues = { name: '', role: 'read-only' };

/** Makes a token and shows it this once. */
export function NewTokenForm() {
  const [values, setValues] = useState(EMPTY);
  const create = useCreateApiToken();
  return (
    <EntryForm
      groups={GROUPS}
      values={values}
      onChange={setValues}
      entry={create}
      act="Make a token"
      pendingText="Making ..."
      onEnter={() =>
        create.mutate(
          { name: textOf(values, 'name'), role: roleOf(values) },
          { onSuccess: () => setValues(EMPTY) },
        )
      }
    >
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
    </EntryForm>
  );
}
