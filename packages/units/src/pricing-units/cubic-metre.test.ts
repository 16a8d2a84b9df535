import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { cubicMetre } from './cubic-metre.ts';

describe('cubic-metre', () => {
  it('does not become board feet, which are a measure of nominal size (UN/ECE Recommendation 20, MTQ)', () => {
    expect(cubicMetre.code).toBe('MTQ');
    expect(() => convertQuantity(1, 'cubic-metre', 'board-foot')).toThrow('cubic metre');
  });

  it.each(['m3', 'm³', 'EUR/m³', 'cbm'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(cubicMetre);
  });
});
