import { decimal } from '@scantling/decimals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { purchaseCost } from './purchase-tax.ts';

// cost = net + tax that cannot be recovered: common practice, no source.
describe('purchaseCost', () => {
  it.each([
    [true, 1, '100', '19', '100', '119'],
    [true, 0, '100', '19', '119', '119'],
    [false, 1, '119', '22.61', '119', '141.61'],
    [false, '0.5', '119', '22.61', '130.305', '141.61'],
  ])(
    'sorts out 119 at 19 %%, included %s, recoverable %s',
    (isIncluded, recoverableShare, net, tax, cost, gross) => {
      const found = purchaseCost(119, { rate: '0.19', isIncluded, recoverableShare });
      expect([found.net, found.tax, found.cost, found.gross].map(String)).toEqual([net, tax, cost, gross]);
    },
  );

  it('always accounts for the gross: cost and what comes back', () => {
    const share = fc.integer({ min: 0, max: 100 });
    fc.assert(
      fc.property(fc.nat(10 ** 7), share, share, fc.boolean(), (cents, rate, recovered, isIncluded) => {
        const price = decimal(cents).div(100);
        const purchaseTax = { rate: rate / 100, isIncluded, recoverableShare: recovered / 100 };
        const { cost, recoverable, gross } = purchaseCost(price, purchaseTax);
        expect(cost.plus(recoverable).minus(gross).abs().lt('1e-25')).toBe(true);
        if (isIncluded) expect(gross.minus(price).abs().lt('1e-25')).toBe(true);
      }),
    );
  });

  it('names the field that cannot be', () => {
    const all = { rate: '0.19', isIncluded: true, recoverableShare: 1 };
    expect(() => purchaseCost(1, { ...all, rate: -1 })).toThrow('rate is -1: enter 0 or more');
    expect(() => purchaseCost(1, { ...all, recoverableShare: 20 })).toThrow('recoverableShare is 20');
  });
});
