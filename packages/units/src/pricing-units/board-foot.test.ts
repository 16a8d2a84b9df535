import { describe, expect, it } from 'vitest';
import { M3_PER_BOARD_FOOT } from '../conversions.ts';
import { readPricingUnit } from '../read-pricing-unit.ts';
import { boardFoot } from './board-foot.ts';

describe('board-foot', () => {
  it('is 144 cubic inches, 0.0254 m a side (NIST SP 811, appendix B)', () => {
    expect(boardFoot.code).toBe('BFT');
    expect(boardFoot.factor).toBe('1');
    expect(M3_PER_BOARD_FOOT.div('0.0254').div('0.0254').div('0.0254').toString()).toBe('144');
  });

  it.each(['/BF', 'bd. ft.', '$/BdFt', 'board feet'])('is read from "%s"', (text) => {
    expect(readPricingUnit(text)).toBe(boardFoot);
  });
});
