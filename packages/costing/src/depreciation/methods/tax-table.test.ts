import { describe, expect, it } from 'vitest';
import { depreciationSchedule } from '../schedule.ts';
import { halfYearPercents, RECOVERY_YEARS, type TaxTable } from './tax-table.ts';

const asset = { id: 'desk', name: 'Desk', cost: '10000', salvage: '500' };
const method: TaxTable = { name: 'tax-table', recoveryYears: 7, decliningPercent: 200 };

describe('the tax table', () => {
  // IRS Publication 946 (2025), table A-1, 10-year column, as transcribed.
  it('is rebuilt by rounding each year and carrying the rounded figure', () => {
    expect(halfYearPercents(10, 200).map(Number)).toEqual([
      10, 18, 14.4, 11.52, 9.22, 7.37, 6.55, 6.55, 6.56, 6.55, 3.28,
    ]);
  });

  it('adds up to the whole cost in every column', () => {
    for (const years of RECOVERY_YEARS)
      for (const percent of [200, 150]) {
        const column = halfYearPercents(years, percent);
        expect(column).toHaveLength(years + 1);
        expect(column.reduce((total, part) => total.plus(part)).toString()).toBe('100');
      }
  });

  it('takes shares of cost whatever the salvage, and says whose the tax treatment is', () => {
    const schedule = depreciationSchedule(method, asset, { currency: 'USD' });
    expect(schedule.years.map((line) => line.expense.value.toNumber())).toEqual([
      1429, 2449, 1749, 1249, 893, 892, 893, 446,
    ]);
    expect(schedule.years.at(-1)?.closing.value.toString()).toBe('0');
    expect(schedule.caution).toContain('accountant');
  });

  it('takes half a line in the year of disposal', () => {
    const sold = { ...asset, disposal: { year: 3, months: 11, proceeds: 6000 } };
    const { years, disposal } = depreciationSchedule(method, sold, { currency: 'USD' });
    expect(years.map((line) => line.expense.value.toNumber())).toEqual([1429, 2449, 874.5]);
    expect(disposal?.gain.value.toString()).toBe('752.5');
  });

  it('refuses a period that has no table', () => {
    const read = JSON.parse('{"name":"tax-table","recoveryYears":6,"decliningPercent":200}') as TaxTable;
    expect(() => depreciationSchedule(read, asset, { currency: 'USD' })).toThrow(
      'depreciation.recoveryYears cannot be 6: choose 3, 5, 7, 10',
    );
  });
});
