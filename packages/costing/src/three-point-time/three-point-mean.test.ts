import { type Figure, input, recalculate, toTable } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CostingInputError } from '../input-error.ts';
import { threePointMean } from './three-point-mean.ts';

const hours = (key: string, value: string): Figure<'h'> =>
  input({ key, label: key, unit: 'h', value, source: { kind: 'entered', text: 'test' } });
const time = (low: string, likely: string, high: string) => ({
  low: hours('low', low),
  likely: hours('likely', likely),
  high: hours('high', high),
});

describe('the mean of a three-point time', () => {
  it('is a sixth of low, four times likely and high, and its working comes to the same', () => {
    const mean = threePointMean('mean', time('5', '8', '14'), 'bill.operations.0');
    expect(mean.value.toString()).toBe('8.5');
    const { ids, figures } = toTable({ mean }, { withDerivations: true });
    expect(recalculate(figures, { high: '20' }).get(ids.mean)?.toString()).toBe('9.5');
  });

  it('lies between low and high, and is the time itself where all three are one', () => {
    fc.assert(
      fc.property(fc.tuple(fc.nat(1000), fc.nat(1000), fc.nat(1000)), (three) => {
        const [low = 0, likely = 0, high = 0] = [...three].sort((a, b) => a - b);
        const mean = threePointMean('mean', time(`${low}`, `${likely}`, `${high}`), 'field').value;
        expect(mean.gte(low) && mean.lte(high)).toBe(true);
        expect(threePointMean('m', time(`${low}`, `${low}`, `${low}`), 'f').value.eq(low)).toBe(true);
      }),
    );
  });

  it('names the field that is out of order', () => {
    const fieldOf = (low: string, likely: string, high: string) => {
      try {
        threePointMean('mean', time(low, likely, high), 'bill.operations.2');
      } catch (error) {
        if (error instanceof CostingInputError) return error.field;
      }
      return null;
    };
    expect(fieldOf('3', '2', '4')).toBe('bill.operations.2.runHoursLow');
    expect(fieldOf('1', '2', '1.5')).toBe('bill.operations.2.runHoursHigh');
    expect(fieldOf('2', '2', '2')).toBeNull();
  });
});
