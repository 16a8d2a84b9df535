import { describe, expect, it } from 'vitest';
import { type CurrentPrice, comparePrice } from './compare-price.ts';
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

describe('a price compared with the one before', () => {
  const terms = { currency: 'EUR', taxIncluded: false, taxRate: '0.2', taxRecoverable: '1' };
  const row = {
    code: 'A',
    description: '',
    unit: 'each',
    amount: '5',
    from: '0',
    breakKind: 'all-units',
  } as const;
  const current: CurrentPrice = { ...row, ...terms, material: 'M' };

  it.each([
    ['new', undefined],
    ['unchanged', { ...current, amount: '5.00', taxRate: '0.20' }],
    ['dearer', { ...current, amount: '4.99' }],
    ['cheaper', { ...current, amount: '5.01' }],
    ['changed', { ...current, currency: 'USD' }],
    ['changed', { ...current, packSize: '10' }],
    ['changed', { ...current, amount: '4', taxIncluded: true }],
  ] as const)('is %s', (change, before) => {
    expect(comparePrice(row, terms, before)).toBe(change);
  });

  it('is changed by another material only if the row names one', () => {
    expect(comparePrice({ ...row, material: 'N' }, terms, current)).toBe('changed');
    expect(comparePrice({ ...row, material: 'M' }, terms, current)).toBe('unchanged');
  });
});
