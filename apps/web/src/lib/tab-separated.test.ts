import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fromTabSeparated, toTabSeparated } from './tab-separated.ts';

it('reads what a spreadsheet puts on the clipboard', () => {
  expect(fromTabSeparated('part\tqty\r\n"leg\nturned"\t4\r\n')).toEqual([
    ['part', 'qty'],
    ['leg\nturned', '4'],
  ]);
  expect(fromTabSeparated('24"\t1 1/2"')).toEqual([['24"', '1 1/2"']]);
  expect(fromTabSeparated('')).toEqual([]);
});

it('gives back any table it wrote', () => {
  const cell = fc.string({ unit: fc.constantFrom('a', '"', '\t', '\n', ' ', '5') });
  const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(table, (rows) => {
      expect(fromTabSeparated(toTabSeparated(rows))).toEqual(rows);
    }),
  );
});
