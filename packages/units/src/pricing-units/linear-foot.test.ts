import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { linearFoot } from './linear-foot.ts';

describe('linear-foot', () => {
  it('is 0.3048 m exactly (NIST SP 811; UN/ECE Recommendation 20, LF)', () => {
    expect(linearFoot.code).toBe('LF');
    expect(convertQuantity(10, 'linear-foot', 'linear-metre').toString()).toBe('3.048');
  });

  it.each(['LF', 'lin. ft.', 'per ft'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(linearFoot);
  });
});
