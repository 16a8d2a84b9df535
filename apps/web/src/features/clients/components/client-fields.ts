import type { BodyOf, ClientRecord, createClient } from '@scantling/contracts';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';

export const CLIENT_GROUPS: readonly GroupSpec[] = [
  {
    fields: [
      { name: 'name', label: 'Name', kind: 'text', isRequired: true },
      { name: 'email', label: 'E-mail address', kind: 'email' },
      { name: 'address', label: 'Address', kind: 'lines' },
      { name: 'notes', label: 'Notes', kind: 'lines', hint: 'Personal data: keep to what the work needs' },
    ],
  },
];

export function clientValues(client: ClientRecord | null): FormValues {
  return {
    name: client?.name ?? '',
    email: client?.email ?? '',
    address: client?.address ?? '',
    notes: client?.notes ?? '',
  };
}

export function clientInput(values: FormValues): BodyOf<typeof createClient> {
  const email = textOf(values, 'email');
  return {
    name: textOf(values, 'name'),
    email: email === '' ? null : email,
    address: textOf(values, 'address'),
    notes: textOf(values, 'notes'),
  };
}
