import { COUNTRY_CODES, type PostalAddress } from '@scantling/contracts';
import { type FieldSpec, type FormValues, linesOf, textOf } from './field-spec.ts';

const countryName = new Intl.DisplayNames('en', { type: 'region' });
const COUNTRIES = COUNTRY_CODES.map((id) => ({ id, label: countryName.of(id) ?? id })).sort((one, other) =>
  one.label.localeCompare(other.label, 'en'),
);

/** The country of the address at `path`, found by typing. */
export function countryField(path: string): FieldSpec {
  return { name: `${path}.countryCode`, label: 'Country', kind: 'search', choices: COUNTRIES };
}

export function addressValues(path: string, { lines, countryCode }: PostalAddress): FormValues {
  return { [`${path}.lines`]: lines.join('\n'), [`${path}.countryCode`]: countryCode ?? '' };
}

/** An address as typed, each line of the text a line of the address. */
export function addressInput(path: string, values: FormValues): PostalAddress {
  const countryCode = textOf(values, `${path}.countryCode`);
  return { lines: linesOf(values, `${path}.lines`), countryCode: countryCode === '' ? null : countryCode };
}
