import { roundHalfAway, ZERO } from '@scantling/decimals';
import { allocate as shareOut } from '@scantling/money';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allocate } from './allocate.ts';
import { operationFaults } from './check-operation.ts';

const inEuro = (share: number) => ({ share: String(share), currency: 'EUR' });

// Largest remainder; the expected shares are worked by hand.
describe('allocate', () => {
  it('gives the units left over to the largest parts cut off, the earlier one first', () => {
    const thirds = ['0.34', '0.33', '0.33'].map((gives, share) => ({
      inputs: [1, 1, 1, 1],
      gives,
      settings: inEuro(share),
    }));
    const uneven = ['-6.67', '-3.33', '0'].map((gives, share) => ({
      inputs: [-10, 20, 10, 0],
      gives,
      settings: inEuro(share),
    }));
    const yen = { inputs: [100, 1, 2], gives: 67, settings: { share: '1', currency: 'JPY' } };
    expect(operationFaults(allocate, [...thirds, ...uneven, yen])).toEqual([]);
  });

  it('writes what an independent spreadsheet also makes of it', () => {
    const weights = fc.array(fc.integer({ min: 1, max: 10_000 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(fc.integer({ min: -500_000, max: 500_000 }), weights, (cents, shares) => {
        const total = roundHalfAway(ZERO.plus(cents).div(100), 2);
        const parts = shareOut(total, shares, 'EUR');
        const cases = parts.map((gives, share) => ({
          inputs: [total, ...shares],
          gives,
          settings: inEuro(share),
        }));
        expect(operationFaults(allocate, cases)).toEqual([]);
        expect(parts.reduce((sum, part) => sum.plus(part), ZERO).eq(total)).toBe(true);
      }),
      { numRuns: 10 },
    );
    // Starts an engine of its own for every share.
  }, 60_000);

  it('says whose share it is', () => {
    expect(allocate.phrase(['30.00', '100', '50'], inEuro(1))).toBe(
      'the share of 30.00 that falls to 50 among 100 and 50, so that all shares add up',
    );
  });

  it('needs a currency, for its smallest unit', () => {
    expect(() => allocate.evaluate([ZERO, ZERO.plus(1)], { share: '0' })).toThrow('name a currency');
  });
});
