import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { movement, movementCoefficient } from './movement.ts';

describe('movement', () => {
  it.each([
    ['7.8', '0.00274'],
    ['7.1', '0.00248'],
    ['9.9', '0.00353'],
    ['11.9', '0.00431'],
  ])('has the coefficient of Wood Handbook table 13-5 for a shrinkage of %s %%', (shrinkage, coefficient) => {
    expect(movementCoefficient(shrinkage).toFixed(5)).toBe(coefficient);
  });

  it('comes back when the moisture does', () => {
    const moisture = fc.integer({ min: 6, max: 14 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), moisture, moisture, (size, from, to) => {
        const there = movement(size, '0.00248', from, to);
        expect(there.plus(movement(size, '0.00248', to, from)).isZero()).toBe(true);
        expect(there.cmp(0)).toBe(Math.sign(to - from));
      }),
    );
  });

  it('refuses moisture where the coefficients do not hold (Wood Handbook ch. 13)', () => {
    expect(() => movement(100, '0.002', 5, 8)).toThrow('fromPercent is 5: enter a number from 6 to 14');
    expect(() => movement(100, '0.002', 8, 19)).toThrow('toPercent is 19');
  });
});
