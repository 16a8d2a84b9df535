import { decimal } from '@scantling/decimals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inclusiveTotals } from './inclusive-totals.ts';

// tax = gross x t / (1 + t): common practice, no source; net rule BR-CO-17 of EN 16931.
describe('inclusiveTotals', () => {
  it('takes the tax out of a fixed gross', () => {
    const line = { quantity: 1, grossPrice: '119.00', category: 'S', rate: '0.19' };
    const totals = inclusiveTotals({ currency: 'EUR', lines: [line], prepaid: '35.70' });
    expect([totals.tax, totals.taxExclusive, totals.payable].map(String)).toEqual(['19', '100', '83.3']);
  });

  it('spreads a discount over the categories before tax', () => {
    const totals = inclusiveTotals({
      currency: 'EUR',
      lines: [
        { quantity: 2, grossPrice: 100, category: 'S', rate: '0.19' },
        { quantity: 1, grossPrice: 100, category: 'S', rate: '0.07' },
      ],
      discount: 30,
    });
    expect(totals.taxes.map(({ gross }) => gross.toString())).toEqual(['180', '90']);
    expect(totals.taxInclusive.toString()).toBe('270');
  });

  it('never changes the gross and stays within a minor unit of the net rule', () => {
    const lines = fc.array(
      fc.record({
        quantity: fc.integer({ min: 1, max: 40 }),
        grossPrice: fc.integer({ min: 1, max: 10 ** 6 }).map((cents) => decimal(cents).div(100)),
        category: fc.constant('S'),
        rate: fc.integer({ min: 0, max: 100 }).map((percent) => percent / 100),
      }),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(lines, (all) => {
        const totals = inclusiveTotals({ currency: 'EUR', lines: all });
        const gross = totals.lineAmounts.reduce((sum, line) => sum.plus(line), decimal(0));
        expect(totals.taxInclusive.eq(gross)).toBe(true);
        expect(totals.taxExclusive.plus(totals.tax).eq(gross)).toBe(true);
        expect(totals.taxes.every((one) => one.differenceFromNetRule.abs().lte('0.01'))).toBe(true);
      }),
    );
  });
});
