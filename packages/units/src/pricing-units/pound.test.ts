import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { pound } from './pound.ts';

describe('pound', () => {
  it('is 0.45359237 kg exactly (NIST SP 811; UN/ECE Recommendation 20, LBR)', () => {
    expect(pound.code).toBe('LBR');
    expect(convertQuantity(10, 'pound', 'kilogram').toString()).toBe('4.5359237');
  });

  it.each(['lb', 'LBS', 'per lb'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(pound);
  });
});
