import { SYD } from '@formulajs/formulajs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depreciationSchedule } from '../schedule.ts';

const asset = { id: 'truck', name: 'Truck', cost: '90000', salvage: '10000', lifeYears: 5 };
const expenses = (changes: object) =>
  depreciationSchedule(
    { name: 'sum-of-years-digits' },
    { ...asset, ...changes },
    { currency: 'USD' },
  ).years.map((line) => Number(line.expense.value.toFixed(6)));

describe("sum of years' digits", () => {
  it('agrees with SYD of a general-purpose spreadsheet library', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 90_000 }),
        fc.integer({ min: 0, max: 90_000 }),
        fc.integer({ min: 1, max: 30 }),
        (salvage, loss, lifeYears) => {
          const cost = salvage + loss;
          expenses({ cost, salvage, lifeYears }).forEach((expense, index) => {
            expect(expense).toBeCloseTo(Number(SYD(cost, salvage, lifeYears, index + 1)), 4);
          });
        },
      ),
    );
  });

  it('splits each year of use over two lines where the first is a part of a year', () => {
    // 15 digits over 150: years of use take 50, 40, 30, 20, 10; nine months of the first are 37.50.
    const asked = { cost: 150, salvage: 0, monthsInFirstYear: 9 };
    expect(expenses(asked)).toEqual([37.5, 42.5, 32.5, 22.5, 12.5, 2.5]);
  });

  it('refuses a life that is no whole number of years', () => {
    expect(() => expenses({ lifeYears: '7.5' })).toThrow('lifeYears leaves 7.5 years');
  });
});
