import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstUnitFrom, type LearningModel, learningRateFrom, learningTimes } from './index.ts';

const context = { currency: 'USD' } as const;

describe('solving a learning curve backwards', () => {
  it('finds the first unit that leads to a known one, under both models', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<LearningModel>('unit', 'cumulative-average'),
        fc.integer({ min: 60, max: 100 }),
        fc.integer({ min: 1, max: 80 }),
        fc.integer({ min: 1, max: 500 }),
        (model, percent, unit, firstUnitHours) => {
          const rate = percent / 100;
          const hours = learningTimes({ model, rate, firstUnitHours, units: unit }, context).lastUnit.value;
          const found = firstUnitFrom({ model, rate, unit, hours }, context).value;
          expect(found.minus(firstUnitHours).abs().lt('1e-20')).toBe(true);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('finds the rate between two known units', () => {
    const rate = learningRateFrom({ unit: 1, hours: 100 }, { unit: 16, hours: '40.96' }, context);
    expect(rate.value.toNumber()).toBeCloseTo(0.8, 20);
    expect(() => learningRateFrom({ unit: 4, hours: 1 }, { unit: 4, hours: 1 }, context)).toThrow(
      'later.unit is not after the earlier one: enter more than 4',
    );
  });
});
