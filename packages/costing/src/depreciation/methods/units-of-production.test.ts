import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depreciationSchedule } from '../schedule.ts';
import type { UnitsOfProduction } from './units-of-production.ts';

const asset = { id: 'bander', name: 'Edge bander', cost: '10000', salvage: '1000' };
const schedule = (changes: Partial<UnitsOfProduction>) =>
  depreciationSchedule(
    { name: 'units-of-production', unit: 'h', lifeUnits: 9000, unitsByYear: [2000, 3000], ...changes },
    asset,
    { currency: 'USD' },
  );
const expenses = (changes: Partial<UnitsOfProduction>) =>
  schedule(changes).years.map((line) => line.expense.value.toNumber());

describe('units of production', () => {
  it('takes wear by the hour and stops at salvage', () => {
    expect(expenses({})).toEqual([2000, 3000]);
    expect(expenses({ unitsByYear: [5000, 5000, 100] })).toEqual([5000, 4000, 0]);
  });

  it('spreads a second-hand cost over the hours that are left', () => {
    expect(expenses({ unitsBefore: 4500 })).toEqual([4000, 5000]);
    expect(() => expenses({ unitsBefore: 9000 })).toThrow('depreciation.unitsBefore leaves no life');
  });

  it('counts pieces as well as hours', () => {
    const { years } = schedule({ unit: 'piece' });
    expect(years[0]?.expense.unit).toBe('money');
    expect(() => schedule({ unitsByYear: [] })).toThrow('depreciation.unitsByYear is empty');
    expect(() => schedule({ unitsByYear: ['-1'] })).toThrow('depreciation.unitsByYear.0 cannot be -1');
  });

  it('ends exactly at salvage once the life is used up', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 999 }), { minLength: 1, maxLength: 12 }),
        (unitsByYear) => {
          const lifeUnits = unitsByYear.reduce((total, units) => total + units, 0);
          const { years, total } = schedule({ lifeUnits, unitsByYear });
          expect(years.at(-1)?.closing.value.minus(1000).abs().lt('1e-25')).toBe(true);
          expect(total.value.minus(9000).abs().lt('1e-25')).toBe(true);
        },
      ),
    );
  });
});
