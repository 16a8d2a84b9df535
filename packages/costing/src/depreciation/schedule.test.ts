import { decimal } from '@scantling/decimals';
import { leaves, recalculate, toTable } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DepreciationMethod } from './methods/index.ts';
import { depreciationSchedule } from './schedule.ts';

const asset = { id: 'planer', name: 'Planer', cost: '6000', salvage: '600', lifeYears: 6, firstYear: 2024 };
const context = { currency: 'EUR', keyPrefix: 'machine/planer' } as const;
const straightLine = { name: 'straight-line' } as const;

const toSalvage: readonly DepreciationMethod[] = [
  { name: 'straight-line' },
  { name: 'sum-of-years-digits' },
  { name: 'declining-balance', factor: 2, hasSwitch: true },
  { name: 'declining-balance', factor: '1.5', hasSwitch: true },
];

describe('a depreciation schedule', () => {
  it('numbers its lines by calendar year where a first year is known', () => {
    const { years } = depreciationSchedule(straightLine, asset, context);
    expect(years.map((line) => line.year)).toEqual([2024, 2025, 2026, 2027, 2028, 2029]);
    expect(years[2]?.expense.label).toBe('Planer: depreciation in year 2026');
    expect([years[2]?.opening.value.toNumber(), years[2]?.closing.value.toNumber()]).toEqual([4200, 3300]);
  });

  it('writes off cost less salvage, no more and no less, whatever the first year', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...toSalvage),
        fc.integer({ min: 0, max: 1e6 }),
        fc.integer({ min: 0, max: 1e6 }),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 1, max: 12 }),
        (method, salvage, loss, lifeYears, monthsInFirstYear) => {
          const cost = salvage + loss;
          const given = { ...asset, cost, salvage, lifeYears, monthsInFirstYear };
          const { years, total } = depreciationSchedule(method, given, context);
          expect(years.at(-1)?.closing.value.minus(salvage).abs().lt('1e-20')).toBe(true);
          expect(total.value.minus(loss).abs().lt('1e-20')).toBe(true);
          const added = years.reduce((all, line) => all.plus(line.expense.value), decimal(0));
          expect(added.minus(loss).abs().lt('1e-20')).toBe(true);
          for (const line of years) expect(line.expense.value.gte('-1e-20')).toBe(true);
        },
      ),
    );
  });

  it('ends with a gain or a loss where the asset goes', () => {
    const sold = { ...asset, disposal: { year: 2026, months: 4, proceeds: '3500' } };
    const { years, disposal } = depreciationSchedule(straightLine, sold, context);
    expect(years.map((line) => line.expense.value.toNumber())).toEqual([900, 900, 300]);
    expect(disposal?.bookValue.value.toString()).toBe('3900');
    expect(disposal?.gain.value.toString()).toBe('-400');
  });

  it('goes in its first year, after its life, or before it began', () => {
    const going = (year: number, months: number, monthsInFirstYear: number) =>
      depreciationSchedule(
        straightLine,
        { ...asset, monthsInFirstYear, disposal: { year, months, proceeds: 0 } },
        context,
      );
    expect(going(2024, 3, 6).total.value.toNumber()).toBe(225);
    expect(going(2024, 12, 6).total.value.toNumber()).toBe(450);
    const late = going(2032, 5, 12);
    expect(late.years).toHaveLength(9);
    expect(late.disposal?.gain.value.toNumber()).toBe(-600);
    expect(() => going(2023, 1, 12)).toThrow('disposal.year cannot be 2023: enter a year from 2024 on');
  });

  it('shows its working down to leaves that are named for good', () => {
    const { years, total } = depreciationSchedule(
      { name: 'declining-balance', factor: 2, hasSwitch: true },
      asset,
      context,
    );
    const keys = leaves([total]).map((leaf) => (leaf.how.kind === 'input' ? leaf.how.key : ''));
    expect(keys.filter((key) => !key.startsWith('constant/')).sort()).toEqual([
      'machine/planer/cost',
      'machine/planer/depreciation/factor',
      'machine/planer/life-years',
      'machine/planer/salvage',
    ]);
    const { figures, ids } = toTable({ total, first: years[0]?.expense ?? total }, { withDerivations: true });
    const again = recalculate(figures, { 'machine/planer/cost': '12000' });
    expect(again.get(ids.first)?.toString()).toBe('4000');
    expect(again.get(ids.total)?.toDecimalPlaces(20).toString()).toBe('11400');
  });

  it('names what is wrong with an asset', () => {
    const fails = (changes: object) => () =>
      depreciationSchedule(straightLine, { ...asset, ...changes }, context);
    expect(fails({ salvage: 7000 })).toThrow('salvage is above cost: enter at most what the asset cost');
    expect(fails({ lifeYears: undefined })).toThrow('lifeYears is missing');
    expect(fails({ lifeYears: 1000 })).toThrow('lifeYears cannot be 1000');
    expect(fails({ monthsInFirstYear: 13 })).toThrow('monthsInFirstYear cannot be 13');
  });
});
