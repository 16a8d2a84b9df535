import { decimal } from '@scantling/decimals';
import { expect, it } from 'vitest';
import { compareValues, type DataColumn, sortValue } from './data-column.ts';

it('orders decimals by value, texts with their numbers, nothing last', () => {
  expect(compareValues(decimal('10'), decimal('9.5'))).toBeGreaterThan(0);
  expect(compareValues(decimal('9007199254740993'), decimal('9007199254740992'))).toBeGreaterThan(0);
  expect(['RO-104', 'RO-84', 'ro-9'].sort(compareValues)).toEqual(['ro-9', 'RO-84', 'RO-104']);
  expect(compareValues(null, 'a')).toBeGreaterThan(0);
  expect(compareValues(null, null)).toBe(0);
});

it('sorts by the text where nothing else is said', () => {
  const name: DataColumn<{ name: string }> = { id: 'name', header: 'Name', text: (row) => row.name };
  expect(sortValue(name, { name: 'ash' })).toBe('ash');
  expect(sortValue({ ...name, sortBy: () => null }, { name: 'ash' })).toBeNull();
});
