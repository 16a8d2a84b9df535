import { leaves } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LabourGrade, labourRate, labourRates } from './labour-rate.ts';

const joiner: LabourGrade = {
  id: 'joiner',
  name: 'Joiner',
  payPerHour: '24.00',
  burden: '0.25',
  productiveShare: '0.75',
  isOwner: false,
};
const rate = (changes: Partial<LabourGrade>) => labourRate({ ...joiner, ...changes }, { currency: 'EUR' });

describe('the labour rate', () => {
  it('is pay with burden over the productive share', () => {
    const { paidHour, perHour } = rate({});
    expect([paidHour.value.toString(), perHour.value.toString()]).toEqual(['30', '40']);
    expect([perHour.unit, perHour.currency]).toEqual(['money/h', 'EUR']);
    const keys = leaves([perHour]).map((leaf) => (leaf.how.kind === 'input' ? leaf.how.key : ''));
    expect(keys).toEqual(
      expect.arrayContaining([
        'labour/joiner/pay-per-hour',
        'labour/joiner/burden',
        'labour/joiner/productive-share',
      ]),
    );
  });

  it('brings in exactly what a year of pay costs, over the productive hours', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9999 }),
        fc.integer({ min: 0, max: 200 }),
        fc.integer({ min: 1, max: 100 }),
        (cents, burden, productive) => {
          const given = { payPerHour: cents / 100, burden: burden / 100, productiveShare: productive / 100 };
          const { perHour, paidHour } = rate(given);
          const recovered = perHour.value.times(1800).times(given.productiveShare);
          expect(recovered.minus(paidHour.value.times(1800)).abs().lt('1e-20')).toBe(true);
        },
      ),
    );
  });

  it('costs the owner even if unpaid', () => {
    expect(rate({ isOwner: true }).perHour.value.toString()).toBe('40');
    expect(() => rate({ isOwner: true, payPerHour: 0 })).toThrow('payPerHour cannot be 0 for the owner');
    expect(rate({ payPerHour: 0 }).perHour.value.isZero()).toBe(true);
  });

  it('names grade and field of what is wrong', () => {
    expect(() => rate({ productiveShare: '0' })).toThrow('productiveShare cannot be 0');
    expect(() => rate({ productiveShare: '75' })).toThrow('enter a number above 0 and of at most 1');
    const helper = { ...joiner, id: 'helper', burden: '-0.1' };
    expect(() => labourRates([joiner, helper], { currency: 'EUR' })).toThrow(
      'grades.1.burden cannot be -0.1',
    );
    expect(() => labourRates([joiner, joiner], { currency: 'EUR' })).toThrow(
      'grades.1.id "joiner" is there twice',
    );
    expect(labourRates([joiner], { currency: 'EUR' })).toHaveLength(1);
  });
});
