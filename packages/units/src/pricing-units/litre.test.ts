import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { litre } from './litre.ts';

describe('litre', () => {
  it('is a thousandth of a cubic metre, but liquids are priced apart (UN/ECE Recommendation 20, LTR)', () => {
    expect(litre.code).toBe('LTR');
    expect(convertQuantity(5, 'litre', 'us-gallon').toFixed(4)).toBe('1.3209');
  });

  it.each(['l', 'L', 'ltr', 'liters'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(litre);
  });
});
