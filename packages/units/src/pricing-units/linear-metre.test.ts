import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { linearMetre } from './linear-metre.ts';

describe('linear-metre', () => {
  it('holds 3.28084 ft (NIST SP 811; UN/ECE Recommendation 20, LM)', () => {
    expect(linearMetre.code).toBe('LM');
    expect(convertQuantity(1, 'linear-metre', 'linear-foot').toFixed(5)).toBe('3.28084');
  });

  it.each(['lfm', 'lm', 'm', 'running metre'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(linearMetre);
  });
});
