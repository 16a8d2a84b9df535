import { isRole, ROLE_MEANINGS, ROLES } from '@scantling/contracts';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { FieldGroup } from '../../../components/field.tsx';
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
import { useCreateUser } from '../api/create-user.ts';

const GROUPS: readonly GroupSpec[] = [
  {
    fields: [
      { name: 'name', label: 'Name', kind: 'text', isRequired: true },
      { name: 'email', label: 'E-mail address', kind: 'email', isRequired: true },
      {
        name: 'role',
        label: 'Role',
        kind: 'choice',
        choices: ROLES.map((id) => ({ id, label: id, note: ROLE_MEANINGS[id] })),
      },
    ],
  },
];
const EMPTY: FormValues = { name: '', email: '', role: 'maker' };

/** Nobody signs up by themselves: an owner enters each person with a first password. */
export function NewUserForm() {
  const [values, setValues] = useState(EMPTY);
  const [password, setPassword] = useState('');
  const create = useCreateUser();
  const { errorFor, unplaced } = fieldErrors(create.error, [...shownNames(GROUPS, values), 'password']);
  return (
    <form
      className="record-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const role = textOf(values, 'role');
        create.mutate(
          {
            name: textOf(values, 'name'),
            email: textOf(values, 'email'),
            role: isRole(role) ? role : 'read-only',
            password,
          },
          {
            onSuccess: () => {
              setValues(EMPTY);
              setPassword('');
            },
          },
        );
      }}
    >
      {create.isError && <ErrorNotice error={create.error} errors={unplaced} />}
      <FormFields groups={GROUPS} values={values} onChange={setValues} errorFor={errorFor} />
      <FieldGroup>
        <TextInput
          label="First password"
          type="password"
          autoComplete="new-password"
          hint="At least 12 characters; a sentence is fine"
          value={password}
          onChange={setPassword}
          error={errorFor('password')}
          isRequired
        />
      </FieldGroup>
      <div className="form-acts">
        <Button type="submit" look="main" isPending={create.isPending} pendingText="Entering ...">
          Enter
        </Button>
        <span role="status" className="form-said">
          {create.isSuccess ? `${create.data.value.name} can sign in now` : ''}
        </span>
      </div>
    </form>
  );
}
