import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { usGallon } from './us-gallon.ts';

describe('us-gallon', () => {
  it('is 231 cubic inches, 3.785411784 l exactly (NIST HB 44, appendix C; UN/ECE Recommendation 20, GLL)', () => {
    expect(usGallon.code).toBe('GLL');
    expect(convertQuantity(1, 'us-gallon', 'litre').toString()).toBe('3.785411784');
  });

  it.each(['gal', 'Gallon', 'US gal.'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(usGallon);
  });
});
