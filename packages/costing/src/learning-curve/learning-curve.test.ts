import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type LearningModel,
  learningTimes,
  learningTotal,
  learningUnit,
  readLearningCurve,
} from './index.ts';

const context = { currency: 'USD' } as const;
const times = (model: LearningModel, firstUnitHours: number, rate: number, units: number) =>
  learningTimes({ model, firstUnitHours, rate, units }, context);

describe('learning curves', () => {
  // Wright's and Crawford's models on the same 80 %: 160 and 180 hours for two units.
  it('answer by the model they name', () => {
    expect(times('cumulative-average', 100, 0.8, 2).total.value.toNumber()).toBeCloseTo(160, 20);
    expect(times('unit', 100, 0.8, 2).total.value.toNumber()).toBeCloseTo(180, 20);
    expect(times('cumulative-average', 10, 0.8, 2).lastUnit.value.toNumber()).toBeCloseTo(6, 20);
    expect(times('cumulative-average', 10, 0.8, 1).lastUnit.value.toNumber()).toBe(10);
  });

  it('grow with every unit, by no more than the one before took, and give back the sum of units', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<LearningModel>('unit', 'cumulative-average'),
        fc.integer({ min: 60, max: 100 }),
        fc.integer({ min: 2, max: 60 }),
        (model, percent, units) => {
          const rate = percent / 100;
          const { firstUnit, total, average } = times(model, 7, rate, units);
          const curve = readLearningCurve({ model, rate }, context);
          let added = firstUnit.value;
          let before = firstUnit.value;
          for (let n = 2; n <= units; n += 1) {
            const unit = learningUnit(firstUnit, n, curve).value;
            expect(unit.gt(0) && unit.lte(before.plus('1e-25'))).toBe(true);
            added = added.plus(unit);
            before = unit;
          }
          expect(added.minus(total.value).abs().lt('1e-20')).toBe(true);
          expect(average.value.lte(firstUnit.value.plus('1e-25'))).toBe(true);
          expect(total.value.gt(learningTotal(firstUnit, units - 1, curve).value)).toBe(true);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('name what is wrong', () => {
    expect(() => times('unit', 0, 0.8, 2)).toThrow('firstUnitHours cannot be 0');
    expect(() => times('unit', 1, 1.2, 2)).toThrow('rate cannot be 1.2');
    expect(() => times('unit', 1, 0.8, 2.5)).toThrow(
      'units cannot be 2.5: enter a whole number from 1 to 2000',
    );
    const model = JSON.parse('"doubling"') as LearningModel;
    expect(() => times(model, 1, 0.8, 2)).toThrow('choose unit or cumulative-average');
  });
});
