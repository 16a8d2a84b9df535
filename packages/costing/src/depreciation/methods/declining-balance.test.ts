import { DDB } from '@formulajs/formulajs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depreciationSchedule } from '../schedule.ts';

const asset = { id: 'saw', name: 'Saw', cost: '10000', salvage: '1000', lifeYears: 5 };
const schedule = (factor: number, hasSwitch: boolean, changes: object = {}) =>
  depreciationSchedule(
    { name: 'declining-balance', factor, hasSwitch },
    { ...asset, ...changes },
    { currency: 'USD' },
  );
const expenses = (...given: Parameters<typeof schedule>) =>
  schedule(...given).years.map((line) => Number(line.expense.value.toFixed(6)));

/** ODF 1.3 part 4, 6.12.50 VDB for whole periods, written from its definition in floats. */
function variableDeclining(cost: number, salvage: number, life: number, factor: number): number[] {
  const taken: number[] = [];
  let book = cost;
  for (let period = 0; period < life; period += 1) {
    const declining = (book * factor) / life;
    const straight = (book - salvage) / (life - period);
    const expense = Math.min(Math.max(declining, straight), book - salvage);
    taken.push(expense);
    book -= expense;
  }
  return taken;
}

describe('declining balance', () => {
  // OpenStax Financial Accounting section 11.3, silk-screen machine: 4,000 and 2,400.
  it('takes the same share of the book value and stops at salvage', () => {
    expect(expenses(2, false)).toEqual([4000, 2400, 1440, 864, 296]);
  });

  it('stays above salvage where the share is small and nothing switches', () => {
    const closing = schedule(1, false, { salvage: 0 }).years.at(-1)?.closing.value.toNumber();
    expect(closing).toBeCloseTo(10000 * 0.8 ** 5, 6);
  });

  it('reaches salvage with the switch', () => {
    expect(expenses(2, true, { salvage: 0 })).toEqual([4000, 2400, 1440, 1080, 1080]);
  });

  it('takes a part of the first year and the rest in one year more', () => {
    expect(expenses(2, false, { monthsInFirstYear: 6, salvage: 0 })).toEqual([
      2000, 3200, 1920, 1152, 691.2, 207.36,
    ]);
  });

  it('agrees with DDB of a general-purpose spreadsheet library', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5000 }),
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 1, max: 25 }),
        fc.constantFrom(1, 1.5, 2, 3),
        (salvage, loss, lifeYears, factor) => {
          const cost = salvage + loss;
          expenses(factor, false, { cost, salvage, lifeYears }).forEach((expense, index) => {
            expect(expense).toBeCloseTo(Number(DDB(cost, salvage, lifeYears, index + 1, factor)), 4);
          });
        },
      ),
    );
  });

  it('agrees with the definition of VDB for full years', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5000 }),
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 1, max: 25 }),
        fc.constantFrom(1, 1.5, 2),
        (salvage, loss, lifeYears, factor) => {
          const cost = salvage + loss;
          const expected = variableDeclining(cost, salvage, lifeYears, factor);
          expenses(factor, true, { cost, salvage, lifeYears }).forEach((expense, index) => {
            expect(expense).toBeCloseTo(expected[index] ?? Number.NaN, 4);
          });
        },
      ),
    );
  });

  it('refuses a factor of 0', () => {
    expect(() => expenses(0, false)).toThrow('depreciation.factor cannot be 0: enter a number above 0');
  });
});
