import { type BodyOf, type ClientRecord, type createClient, NO_ADDRESS } from '@scantling/contracts';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import {
  addressInput,
  addressValues,
  countryField,
} from '../../../components/record-editor/postal-address.ts';

export const CLIENT_GROUPS: readonly GroupSpec[] = [
  {
    fields: [
      { name: 'name', label: 'Name', kind: 'text', isRequired: true },
      { name: 'email', label: 'E-mail address', kind: 'email' },
      { name: 'phone', label: 'Telephone', kind: 'text' },
      { name: 'address.lines', label: 'Address', kind: 'lines', hint: 'As on an envelope, below the name' },
      countryField('address'),
      {
        name: 'taxNumber',
        label: 'Tax number',
        kind: 'text',
        hint: 'Where the law asks for it on papers; your accountant knows',
      },
      { name: 'notes', label: 'Notes', kind: 'lines', hint: 'Personal data: keep to what the work needs' },
    ],
  },
];

export function clientValues(client: ClientRecord | null): FormValues {
  return {
    name: client?.name ?? '',
    email: client?.email ?? '',
    phone: client?.phone ?? '',
    ...addressValues('address', client?.address ?? NO_ADDRESS),
    taxNumber: client?.taxNumber ?? '',
    notes: client?.notes ?? '',
  };
}

export function clientInput(values: FormValues): BodyOf<typeof createClient> {
  const email = textOf(values, 'email');
  return {
    name: textOf(values, 'name'),
    email: email === '' ? null : email,
    phone: textOf(values, 'phone'),
    address: addressInput('address', values),
    taxNumber: textOf(values, 'taxNumber'),
    notes: textOf(values, 'notes'),
  };
}
