import { decimal, ZERO } from '@scantling/decimals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  annuityFutureValueFactor,
  annuityPresentValueFactor,
  capitalRecoveryFactor,
  futureValue,
  presentValue,
} from './annuity.ts';

describe('annuities', () => {
  const rates = fc.integer({ min: 0, max: 300 }).map((thousandths) => decimal(thousandths).div(1000));
  const years = fc.integer({ min: 1, max: 40 });
  const isNear = (a: typeof ZERO, b: typeof ZERO) => a.minus(b).abs().lt('1e-20');

  it('are the sums of their payments, discounted or grown one by one', () => {
    fc.assert(
      fc.property(rates, years, (rate, n) => {
        const times = Array.from({ length: n }, (_, at) => at + 1);
        const present = times.reduce((sum, t) => sum.plus(presentValue(1, rate, t)), ZERO);
        expect(isNear(annuityPresentValueFactor(rate, n), present)).toBe(true);
        expect(isNear(futureValue(present, rate, n), annuityFutureValueFactor(rate, n))).toBe(true);
      }),
    );
  });

  it('are repaid by the capital recovery factor', () => {
    fc.assert(
      fc.property(rates, years, (rate, n) => {
        const payment = capitalRecoveryFactor(rate, n).times(1000);
        let owed = decimal(1000);
        for (let year = 0; year < n; year += 1) owed = owed.times(rate.plus(1)).minus(payment);
        expect(isNear(owed, ZERO)).toBe(true);
      }),
    );
  });

  it('refuse no periods and a rate that eats everything', () => {
    expect(() => capitalRecoveryFactor('0.05', 0)).toThrow('periods is 0: enter a number above 0');
    expect(() => presentValue(1, -1, 3)).toThrow('rate is -1');
  });
});
