import { describe, expect, it } from 'vitest';
import { PRICE_COLUMNS } from './price-columns.ts';
import { guessPriceMapping, placeColumns } from './price-mapping.ts';
import { type PriceRowContext, readPriceRow } from './read-price-row.ts';

const context: PriceRowContext = {
  places: placeColumns(guessPriceMapping(PRICE_COLUMNS), PRICE_COLUMNS),
  decimalMark: 'point',
  isMaterial: (code) => code === 'ASH-4/4',
};
const WHOLE = [
  'A-1',
  'Ash  board',
  'ASH-4/4',
  'EUR/bd ft',
  '6.40',
  '100',
  'Incremental',
  '10',
  '20',
  '14 days',
];

describe('a row of a price file', () => {
  it('is read whole', () => {
    expect(readPriceRow(WHOLE, context)).toEqual({
      row: {
        code: 'A-1',
        description: 'Ash board',
        material: 'ASH-4/4',
        unit: 'board-foot',
        amount: '6.4',
        from: '100',
        breakKind: 'incremental',
        packSize: '10',
        minimumQuantity: '20',
        leadDays: 14,
      },
    });
  });

  it('needs no more than code, unit and price', () => {
    expect(readPriceRow(['A', '', '', 'm³', '900'], context)).toEqual({
      row: {
        code: 'A',
        description: '',
        unit: 'cubic-metre',
        amount: '900',
        from: '0',
        breakKind: 'all-units',
      },
    });
    expect(readPriceRow(['A', '', '', '', '9'], { ...context, unit: 'sheet' })).toMatchObject({
      row: { unit: 'sheet' },
    });
  });

  it('names every problem with its column and mend', () => {
    const read = readPriceRow(
      ['', 'x', 'OAK', 'fathom', 'on request', '1.1234567', 'odd', '0', '-1', 'soon'],
      context,
    );
    expect('problems' in read && read.problems.map(({ column }) => column).sort()).toEqual(
      PRICE_COLUMNS.filter((column) => column !== 'description').sort(),
    );
    if ('problems' in read) for (const { mend } of read.problems) expect(mend).toMatch(/\.$/);
  });
});
