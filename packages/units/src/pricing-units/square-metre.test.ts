import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { squareMetre } from './square-metre.ts';

describe('square-metre', () => {
  it('holds 10.7639 square feet (NIST SP 811; UN/ECE Recommendation 20, MTK)', () => {
    expect(squareMetre.code).toBe('MTK');
    expect(convertQuantity(1, 'square-metre', 'square-foot').toFixed(4)).toBe('10.7639');
  });

  it.each(['m2', 'm²', '€/m²', 'sqm'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(squareMetre);
  });
});
