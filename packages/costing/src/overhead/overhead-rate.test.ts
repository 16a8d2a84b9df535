import { entered, type Figure, input } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { type OverheadPool, overheadCharge, overheadRate } from './index.ts';

const workshop: OverheadPool<'productive-hours'> = {
  id: 'workshop',
  name: 'Workshop',
  kind: 'workshop',
  amounts: [
    { id: 'rent', name: 'Rent', yearlyAmount: 12000 },
    { id: 'heat', name: 'Heat', yearlyAmount: '3000.00' },
  ],
  recoveredByRates: 3000,
  base: 'productive-hours',
  plannedBase: 2400,
};
const context = { currency: 'EUR' } as const;
const hours = (value: number) => input({ key: 'h', label: 'hours', unit: 'h', value, source: entered() });

describe('the overhead rate', () => {
  it('spreads a pool, net of what rates recover, over the planned hours', () => {
    const { net, rate, actual } = overheadRate(workshop, context);
    expectTypeOf(rate).toEqualTypeOf<Figure<'money/h'>>();
    expect([net.value.toString(), rate.value.toString(), rate.unit, rate.currency]).toEqual([
      '12000',
      '5',
      'money/h',
      'EUR',
    ]);
    expect(actual).toBeNull();
  });

  it('is a pure share over labour or prime cost', () => {
    const pool: OverheadPool<'labour-cost'> = { ...workshop, base: 'labour-cost', plannedBase: 48000 };
    const { rate } = overheadRate(pool, context);
    expectTypeOf(rate).toEqualTypeOf<Figure<'ratio'>>();
    expect([rate.value.toString(), rate.unit, rate.currency]).toEqual(['0.25', 'ratio', null]);
    const labour = input({
      key: 'l',
      label: 'labour',
      unit: 'money',
      currency: 'EUR',
      value: 66,
      source: entered(),
    });
    expect(overheadCharge('overhead', overheadRate(pool, context), labour).value.toString()).toBe('16.5');
    expect(() => overheadCharge('overhead', overheadRate(pool, context), hours(2))).toThrow(
      'quantity is in h: give money for a base of labour cost',
    );
  });

  it('tells spending from volume where the year went otherwise', () => {
    const { actual } = overheadRate({ ...workshop, actual: { amount: 12500, base: 2200 } }, context);
    expect(actual?.recovered.value.toNumber()).toBe(11000);
    expect(actual?.underRecovered.value.toNumber()).toBe(1500);
    expect([actual?.spending.value.toNumber(), actual?.volume.value.toNumber()]).toEqual([500, 1000]);
    expect(actual?.rate.value.toNumber()).toBeCloseTo(5.681818, 6);
  });

  it('charges jobs all of the pool when the planned hours are worked', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e6 }),
        fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 1, maxLength: 12 }),
        (yearlyAmount, jobs) => {
          const { recoveredByRates: _, ...gross } = workshop;
          const plannedBase = jobs.reduce((all, job) => all + job, 0);
          const pool = { ...gross, amounts: [{ id: 'rent', name: 'Rent', yearlyAmount }], plannedBase };
          const rate = overheadRate(pool, context);
          const charged = jobs
            .map((job) => overheadCharge('overhead', rate, hours(job)).value)
            .reduce((all, one) => all.plus(one));
          expect(charged.minus(yearlyAmount).abs().lt('1e-20')).toBe(true);
        },
      ),
    );
  });

  it('names what is wrong', () => {
    const fails = (changes: Partial<typeof workshop>) => () =>
      overheadRate({ ...workshop, ...changes }, context);
    expect(fails({ plannedBase: 0 })).toThrow('plannedBase cannot be 0: enter a number above 0');
    expect(fails({ recoveredByRates: 16000 })).toThrow('recoveredByRates is 16000 of amounts of 15000');
    expect(fails({ amounts: [{ id: 'rent', name: 'Rent', yearlyAmount: '-5' }] })).toThrow(
      'amounts.0.yearlyAmount cannot be -5',
    );
  });
});
