import { SLN } from '@formulajs/formulajs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depreciationSchedule } from '../schedule.ts';

const asset = { id: 'press', name: 'Press', cost: '58000', salvage: '10000', lifeYears: 5 };
const method = { name: 'straight-line' } as const;
const expenses = (changes: object) =>
  depreciationSchedule(method, { ...asset, ...changes }, { currency: 'USD' }).years.map((line) =>
    Number(line.expense.value.toFixed(6)),
  );

describe('straight line', () => {
  // OpenStax Financial Accounting section 11.3, partial-year depreciation of the printing press.
  it('leaves what a part of the first year did not take to one year more', () => {
    expect(expenses({})).toEqual([9600, 9600, 9600, 9600, 9600]);
    expect(expenses({ monthsInFirstYear: 9 })).toEqual([7200, 9600, 9600, 9600, 9600, 2400]);
  });

  it('takes the years run before a second-hand purchase off the life', () => {
    expect(expenses({ ageYears: '1.5' })).toEqual([13714.285714, 13714.285714, 13714.285714, 6857.142857]);
    expect(() => expenses({ ageYears: 5 })).toThrow('ageYears leaves no life');
  });

  it('takes all in one line where the life ends within the first year', () => {
    expect(expenses({ lifeYears: '0.5', monthsInFirstYear: 9 })).toEqual([48000]);
  });

  it('agrees with SLN of a general-purpose spreadsheet library', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 90_000 }),
        fc.integer({ min: 0, max: 90_000 }),
        fc.integer({ min: 1, max: 40 }),
        (salvage, loss, life) => {
          const ours = expenses({ cost: salvage + loss, salvage, lifeYears: life });
          expect(ours).toHaveLength(life);
          for (const expense of ours)
            expect(expense).toBeCloseTo(Number(SLN(salvage + loss, salvage, life)), 5);
        },
      ),
    );
  });
});
