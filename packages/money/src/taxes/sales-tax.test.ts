import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { salesTax } from './sales-tax.ts';

// Rhode Island Gen. Laws 44-18.1-25: third decimal, item or invoice basis.
describe('salesTax', () => {
  it('is the same on both bases for one item, and differs by half a cent an item at most', () => {
    const prices = fc.array(fc.nat(100_000), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(prices, fc.integer({ min: 0, max: 1_500 }), (cents, rate) => {
        const all = cents.map((value) => (value / 100).toFixed(2));
        const share = (rate / 10_000).toFixed(4);
        const difference = salesTax(all, share, 'USD', 'item').minus(salesTax(all, share, 'USD', 'invoice'));
        expect(difference.abs().lte(0.005 * (all.length + 1))).toBe(true);
        if (all.length === 1) expect(difference.isZero()).toBe(true);
      }),
    );
  });

  it('names the price that cannot be', () => {
    expect(() => salesTax(['1', 'x'], '0.07', 'USD', 'item')).toThrow('prices.1 is "x": enter a number');
  });
});
