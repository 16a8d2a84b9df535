import { useState } from 'react';
import { EntryForm } from '../../../components/record-editor/entry-form.tsx';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import { ROLE_FIELD, roleOf } from '../../../components/record-editor/role-field.ts';
import { useCreateUser } from '../api/create-user.ts';

const GROUPS: readonly GroupSpec[] = [
  {
    fields: [
      { name: 'name', label: 'Name', kind: 'text', isRequired: true },
      { name: 'email', label: 'E-mail address', kind: 'email', isRequired: true },
      ROLE_FIELD,
      {
        name: 'password',
        label: 'First password',
        kind: 'new-password',
        isRequired: true,
        hint: 'At least 12 characters; a sentence is fine',
      },
    ],
  },
];
const EMPTY: FormValues = { name: '', email: '', role: 'maker', password: '' };

/** Nobody signs up by themselves: an owner enters each person with a first password. */
export function NewUserForm() {
  const [values, setValues] = useState(EMPTY);
  const create = useCreateUser();
  return (
    <EntryForm
      groups={GROUPS}
      values={values}
      onChange={setValues}
      entry={create}
      act="Enter"
      pendingText="Entering ..."
      {...(create.isSuccess ? { said: `${create.data.value.name} can sign in now` } : {})}
      onEnter={() =>
        create.mutate(
          {
            name: textOf(values, 'name'),
            email: textOf(values, 'email'),
            role: roleOf(values),
            // As it was typed: a space at its end belongs to a password.
            password: String(values.password),
          },
          { onSuccess: () => setValues(EMPTY) },
        )
      }
    />
  );
}
