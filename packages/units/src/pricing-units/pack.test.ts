import { describe, expect, it } from 'vitest';
import { packContentNamed, readPricingUnit } from '../read-pricing-unit.ts';
import { pack } from './pack.ts';

describe('pack', () => {
  it('takes its content from the material, or from a name that tells it (UN/ECE Recommendation 21, PK, as XPK)', () => {
    expect(pack.code).toBe('XPK');
    expect(['pr', 'Dozen', 'box'].map(packContentNamed)).toEqual([2, 12, undefined]);
  });

  it.each(['pk', 'Box', 'pr', 'per pair'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(pack);
  });
});
