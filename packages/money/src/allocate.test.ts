import { decimal, ZERO } from '@scantling/decimals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allocate } from './allocate.ts';
import { minorUnit } from './amount.ts';

// Largest remainder, also known as Hamilton's method of apportionment (common practice, no source).
describe('allocate', () => {
  it.each([
    ['100', [1, 1, 1], ['33.34', '33.33', '33.33']],
    ['0.05', [3, 7], ['0.02', '0.03']],
    ['-100', [1, 1, 1], ['-33.34', '-33.33', '-33.33']],
    ['0', [1, 2], ['0', '0']],
    ['10', [0, 1, 0], ['0', '10', '0']],
  ])('splits %s by %j', (total, weights, shares) => {
    expect(allocate(total, weights, 'EUR').map(String)).toEqual(shares);
  });

  const weights = fc
    .array(fc.oneof(fc.nat(1_000), fc.integer({ min: 1, max: 10 ** 9 })), { minLength: 1, maxLength: 30 })
    .filter((all) => all.some((weight) => weight > 0));
  const currencies = fc.constantFrom('EUR', 'JPY', 'KWD', 'CLF');

  it('gives shares that add up, each within a minor unit of its exact part', () => {
    fc.assert(
      fc.property(fc.integer(), weights, currencies, (minor, parts, currency) => {
        const unit = minorUnit(currency);
        const total = unit.times(minor);
        const shares = allocate(total, parts, currency);
        expect(shares.reduce((sum, share) => sum.plus(share), ZERO).eq(total)).toBe(true);
        const sum = parts.reduce((all, part) => all + part, 0);
        shares.forEach((share, at) => {
          const exact = total.times(parts[at] ?? 0).div(decimal(sum));
          expect(share.minus(exact).abs().lt(unit)).toBe(true);
        });
      }),
    );
  });

  it('refuses what cannot be split', () => {
    expect(() => allocate('0.001', [1], 'EUR')).toThrow(
      'total is 0.001 EUR: round it to the minor unit first',
    );
    expect(() => allocate(1, [0, 0], 'EUR')).toThrow('weights are all 0');
    expect(() => allocate(1, [], 'EUR')).toThrow('weights are all 0');
    expect(() => allocate(1, [1, -1], 'EUR')).toThrow('weights.1 is -1: enter 0 or more');
  });
});
