import { decimal } from '@scantling/decimals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exclusiveTotals } from './exclusive-totals.ts';

// Rules BR-CO-10 to 17 and BR-DEC of EN 16931, as its Schematron in the Peppol repository states them.
describe('exclusiveTotals', () => {
  const lines = fc.array(
    fc.record({
      quantity: fc.integer({ min: -50, max: 500 }),
      netPrice: fc.nat(10 ** 7).map((value) => decimal(value).div(10_000)),
      category: fc.constant('S'),
      rate: fc.constantFrom('0', '0.07', '0.19', '0.25'),
    }),
    { maxLength: 12 },
  );

  it('keeps the rules that tie the totals together', () => {
    fc.assert(
      fc.property(lines, fc.nat(10_000), (all, off) => {
        const allowance = { amount: decimal(off).div(100), category: 'S', rate: '0.19' };
        const totals = exclusiveTotals({
          currency: 'EUR',
          lines: all,
          allowances: [allowance],
          prepaid: '10.00',
        });
        const add = (values: readonly ReturnType<typeof decimal>[]) =>
          values.reduce((sum, value) => sum.plus(value), decimal(0));
        expect(totals.sumOfLines.eq(add(totals.lineAmounts))).toBe(true);
        expect(totals.taxExclusive.eq(add(totals.taxes.map(({ taxable }) => taxable)))).toBe(true);
        expect(totals.tax.eq(add(totals.taxes.map(({ tax }) => tax)))).toBe(true);
        expect(totals.taxInclusive.eq(totals.taxExclusive.plus(totals.tax))).toBe(true);
        expect(totals.payable.eq(totals.taxInclusive.minus(10))).toBe(true);
        expect(totals.lineAmounts.every((line) => line.decimalPlaces() <= 2)).toBe(true);
      }),
    );
  });

  it('rounds to the currency’s own minor unit', () => {
    const line = { quantity: 3, netPrice: '33.4', category: 'S', rate: '0.1' };
    expect(exclusiveTotals({ currency: 'JPY', lines: [line] }).taxInclusive.toString()).toBe('110');
  });

  it('names the line and field that cannot be', () => {
    const line = { quantity: 1, netPrice: 1, category: 'S', rate: '0.1' };
    const act = () => exclusiveTotals({ currency: 'EUR', lines: [line, { ...line, priceBaseQuantity: 0 }] });
    expect(act).toThrow('lines.1.priceBaseQuantity is 0: enter a number above 0');
  });
});
