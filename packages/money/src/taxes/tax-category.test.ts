import { decimal, ZERO } from '@scantling/decimals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { byCategory, spreadDiscount } from './tax-category.ts';

// Grouping by category and rate: EN 16931, BG-23.
describe('tax categories', () => {
  it('are one per category and rate, however the rate is written', () => {
    const sums = byCategory([
      { category: 'S', rate: '0.190', amount: decimal(10) },
      { category: 'S', rate: 0.07, amount: decimal(5) },
      { category: 'S', rate: '0.19', amount: decimal(1) },
    ]);
    expect(sums.map(({ rate, amount }) => `${rate} ${amount}`)).toEqual(['0.19 11', '0.07 5']);
  });

  it('share a discount whole', () => {
    const cents = fc.integer({ min: 1, max: 10 ** 7 });
    fc.assert(
      fc.property(cents, cents, cents, (discount, first, second) => {
        const off = decimal(discount).div(100);
        const amounts = [
          { category: 'S', rate: '0.19', amount: decimal(first).div(100) },
          { category: 'S', rate: '0.07', amount: decimal(second).div(100) },
        ];
        const parts = spreadDiscount(off, amounts, 'EUR');
        expect(parts.reduce((sum, { amount }) => sum.plus(amount), ZERO).eq(off)).toBe(true);
      }),
    );
  });

  it('refuse a percentage for a fraction', () => {
    expect(() => byCategory([{ category: 'S', rate: 19, amount: ZERO }])).toThrow('20 % is 0.2');
  });
});
