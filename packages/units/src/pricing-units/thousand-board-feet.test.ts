import { describe, expect, it } from 'vitest';
import { convertQuantity } from '../convert-quantity.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { thousandBoardFeet } from './thousand-board-feet.ts';

describe('thousand-board-feet', () => {
  it('is a thousand of them (UN/ECE Recommendation 20, MBF)', () => {
    expect(convertQuantity(2, 'thousand-board-feet', 'board-foot').toString()).toBe('2000');
    expect(thousandBoardFeet.code).toBe('MBF');
  });

  it.each(['MBF', 'per MBF', 'M bd ft'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(thousandBoardFeet);
  });
});
