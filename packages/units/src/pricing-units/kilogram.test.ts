import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { kilogram } from './kilogram.ts';

describe('kilogram', () => {
  it('holds 2.20462 lb (NIST SP 811; UN/ECE Recommendation 20, KGM)', () => {
    expect(kilogram.code).toBe('KGM');
    expect(convertQuantity(1, 'kilogram', 'pound').toFixed(5)).toBe('2.20462');
  });

  it.each(['kg', 'Kgs', '/kg'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(kilogram);
  });
});
