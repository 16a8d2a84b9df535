import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { sheet } from './sheet.ts';

describe('sheet', () => {
  it('counts for itself alone: its area is the material’s (UN/ECE Recommendation 21, ST, as XST)', () => {
    expect(sheet.code).toBe('XST');
    expect(() => convertQuantity(1, 'sheet', 'square-foot')).toThrow('sheet');
  });

  it.each(['sht', 'Sheets', '/sheet'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(sheet);
  });
});
