import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal, decimal, NotADecimalError } from './decimal.ts';
import { roundDownToMultiple, roundHalfAway, roundHalfEven, roundUpToMultiple } from './round.ts';

describe('rounding', () => {
  it('takes ties away from zero and to even as asked', () => {
    const values = ['0.5', '1.5', '2.5', '3.5', '-0.5', '-2.5'];
    expect(values.map((v) => roundHalfAway(v, 0).toNumber())).toEqual([1, 2, 3, 4, -1, -3]);
    expect(values.map((v) => roundHalfEven(v, 0).toNumber() + 0)).toEqual([0, 2, 2, 4, 0, -2]);
  });

  it('does not fall into the binary trap', () => {
    expect(['1.005', '2.675', '8.345'].map((v) => roundHalfAway(v, 2).toFixed(2))).toEqual([
      '1.01',
      '2.68',
      '8.35',
    ]);
  });

  it('brackets every value between its two multiples', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e6, max: 1e6 }), fc.integer({ min: 1, max: 500 }), (n, s) => {
        const value = decimal(n).div(64);
        const step = decimal(s).div(8);
        const up = roundUpToMultiple(value, step);
        const down = roundDownToMultiple(value, step);
        expect(down.lte(value) && up.gte(value)).toBe(true);
        expect(up.minus(down).lte(step)).toBe(true);
      }),
    );
  });

  it('refuses what is no number', () => {
    for (const bad of ['', 'twelve', 'NaN', 'Infinity', '1,5'])
      expect(() => decimal(bad)).toThrow(NotADecimalError);
    expect(Decimal.precision).toBe(34);
  });
});
