import { entered } from '@scantling/figures';
import { describe, expect, it } from 'vitest';
import { CostingInputError } from './input-error.ts';
import { LeafReader } from './leaf-reader.ts';

const reader = () =>
  new LeafReader({ keyPrefix: 'machine/planer', currency: 'EUR', source: entered(), subject: 'Planer' });

const failure = (act: () => unknown): CostingInputError => {
  try {
    act();
  } catch (error) {
    if (error instanceof CostingInputError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
};

describe('the leaf reader', () => {
  it('names leaves for good and gives a field read twice as one figure', () => {
    const leaves = reader();
    const hours = leaves.read('hoursPerYear', '400', { label: 'hours a year', unit: 'h/year', above: 0 });
    expect(hours.how).toMatchObject({ kind: 'input', key: 'machine/planer/hours-per-year' });
    expect([hours.label, hours.currency]).toEqual(['Planer: hours a year', null]);
    expect(leaves.read('hoursPerYear', '400', { label: 'hours a year', unit: 'h/year' })).toBe(hours);
    expect(leaves.read('price', '12.50', { label: 'price', unit: 'money' }).currency).toBe('EUR');
  });

  it('names field, fault and mend', () => {
    const rules = { label: 'load', unit: 'ratio', from: 0, to: 1 } as const;
    expect(failure(() => reader().read('load', '1.2', rules))).toMatchObject({
      code: 'costing-input',
      field: 'load',
      reason: 'cannot be 1.2',
      mend: 'enter a number of at least 0 and of at most 1',
    });
    expect(failure(() => reader().read('load', undefined, rules)).reason).toBe('is missing');
    expect(failure(() => reader().read('load', 'half', rules)).reason).toBe('is "half", which is no number');
    const whole = { label: 'years', unit: 'year', above: 0, whole: true } as const;
    expect(failure(() => reader().read('years', '2.5', whole)).mend).toBe('enter a whole number above 0');
  });

  it('paths a field of a record inside another', () => {
    const inside = reader().inside('cutters.0', 'cutter/blade', 'blade');
    const rules = { label: 'price', unit: 'money', from: 0 } as const;
    expect(failure(() => inside.read('price', '-1', rules)).field).toBe('cutters.0.price');
    expect(inside.read('price', '60', rules)).toMatchObject({
      label: 'Planer, blade: price',
      how: { key: 'machine/planer/cutter/blade/price' },
    });
  });
});
