import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convertQuantity, UnitConversionError } from './convert-quantity.ts';
import { PRICING_UNIT_IDS, PRICING_UNITS } from './pricing-units/index.ts';

describe('convertQuantity', () => {
  const units = fc.constantFrom(...PRICING_UNIT_IDS);

  it('comes back to the same quantity, or refuses both ways', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), units, units, (quantity, from, to) => {
        const isCount = PRICING_UNITS[from].dimension === 'count';
        if (from === to || (PRICING_UNITS[from].dimension === PRICING_UNITS[to].dimension && !isCount)) {
          const back = convertQuantity(convertQuantity(quantity, from, to), to, from);
          expect(back.minus(quantity).abs().lt('1e-24')).toBe(true);
        } else {
          expect(() => convertQuantity(quantity, from, to)).toThrow(UnitConversionError);
          expect(() => convertQuantity(quantity, to, from)).toThrow(UnitConversionError);
        }
      }),
    );
  });
});
