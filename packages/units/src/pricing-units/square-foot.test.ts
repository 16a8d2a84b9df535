import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { squareFoot } from './square-foot.ts';

describe('square-foot', () => {
  it('is 0.09290304 m2 exactly (NIST SP 811) and FTK in Recommendation 20', () => {
    expect(squareFoot.code).toBe('FTK');
    expect(convertQuantity(32, 'square-foot', 'square-metre').toString()).toBe('2.97289728');
  });

  it.each(['sq ft', 'SF', 'ft²', 'sq.ft.'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(squareFoot);
  });
});
