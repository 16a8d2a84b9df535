import { describe, expect, it } from 'vitest';
import {
  CUBIC_INCHES_PER_BOARD_FOOT,
  CUBIC_INCHES_PER_GALLON,
  KG_M3_PER_LB_FT3,
  LITRES_PER_GALLON,
  M2_PER_SQUARE_FOOT,
  M3_PER_BOARD_FOOT,
  M3_PER_CUBIC_FOOT,
  MM_PER_FOOT,
  MM_PER_INCH,
} from './conversions.ts';

describe('exact conversions', () => {
  // The inch of 25.4 mm fixes all the rest (NIST SP 811, appendix B).
  const metresPerInch = MM_PER_INCH.div(1000);

  it('follow from the inch', () => {
    expect(MM_PER_FOOT.eq(MM_PER_INCH.times(12))).toBe(true);
    expect(M2_PER_SQUARE_FOOT.eq(MM_PER_FOOT.div(1000).pow(2))).toBe(true);
    expect(M3_PER_CUBIC_FOOT.eq(MM_PER_FOOT.div(1000).pow(3))).toBe(true);
    expect(M3_PER_BOARD_FOOT.eq(metresPerInch.pow(3).times(CUBIC_INCHES_PER_BOARD_FOOT))).toBe(true);
    expect(LITRES_PER_GALLON.eq(metresPerInch.pow(3).times(CUBIC_INCHES_PER_GALLON).times(1000))).toBe(true);
  });

  it('give the density ratio of SP 811, 1.601846 E+01', () => {
    expect(KG_M3_PER_LB_FT3.toFixed(5)).toBe('16.01846');
  });
});
