import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { hour } from './hour.ts';

describe('hour', () => {
  it('is time and nothing else (UN/ECE Recommendation 20, HUR)', () => {
    expect(hour.code).toBe('HUR');
    expect(() => convertQuantity(1, 'hour', 'each')).toThrow('hour');
  });

  it.each(['h', 'hrs', 'per hour'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(hour);
  });
});
