import { letterheadSchema, quotingDefaultsSchema } from '@scantling/contracts';
import { expect, test } from 'vitest';
import { rowsOf } from '../../../components/record-editor/field-spec.ts';
import {
  letterheadInput,
  letterheadValues,
  logoOf,
  QUOTING,
  quotingInput,
  quotingValues,
  withLogo,
} from './paper-values.ts';

const letterhead = letterheadSchema.parse({
  tradingName: 'Invented joinery',
  address: { lines: ['4 Mill Lane', 'Invented Town'], countryCode: 'SE' },
  email: 'office@workshop.example',
  bankLines: ['Invented Bank', 'Account 123'],
  logo: { sha256: 'a'.repeat(64), alternativeText: 'A mark' },
  paperSize: 'letter',
});
const quoting = quotingDefaultsSchema.parse({
  depositShares: [{ label: 'On acceptance', share: '0.333333' }],
  taxCategories: [{ id: 'full', name: 'Full', category: 'S', rate: '0.0825', exemptionReason: '' }],
});

test('letterhead and quoting come back from the form as they were read', () => {
  expect(letterheadInput(letterheadValues(letterhead))).toEqual(letterhead);
  expect(quotingInput(quotingValues(quoting))).toEqual(quoting);
});

test('a logo is taken out, and another put in', () => {
  const values = letterheadValues(letterhead);
  expect(letterheadInput(withLogo(values, null)).logo).toBeNull();
  const other = { sha256: 'b'.repeat(64), alternativeText: 'Another mark ' };
  expect(logoOf(withLogo(values, other))).toEqual(other);
});

test('a new tax category gets an id of its own from its name', () => {
  const fresh = (name: string) => ({ id: '', name, category: 'S', rate: '20', exemptionReason: '' });
  const values = quotingValues(quoting);
  const rows = [
    ...rowsOf(values, `${QUOTING}.taxCategories`),
    fresh('Full'),
    fresh('Ermäßigt 7 %'),
    fresh('%'),
  ];
  const { taxCategories } = quotingInput({ ...values, [`${QUOTING}.taxCategories`]: rows });
  expect(taxCategories.map(({ id }) => id)).toEqual(['full', 'full-2', 'erma-igt-7', 'tax']);
  expect(quotingDefaultsSchema.safeParse({ taxCategories }).success).toBe(true);
});

test('days that are no number go to the server, which names the field', () => {
  const values = { ...quotingValues(quoting), [`${QUOTING}.validityDays`]: 'a month' };
  const read = quotingDefaultsSchema.safeParse(JSON.parse(JSON.stringify(quotingInput(values))));
  expect(read.error?.issues.map(({ path }) => path.join('.'))).toEqual(['validityDays']);
});
