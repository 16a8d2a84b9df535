import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { each } from './each.ts';

describe('each', () => {
  it('is not a pack (UN/ECE Recommendation 20, EA)', () => {
    expect(each.code).toBe('EA');
    expect(() => convertQuantity(1, 'each', 'pack')).toThrow('each');
  });

  it.each(['ea', 'EA.', 'pcs', 'H87'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(each);
  });
});
