import { describe, expect, it } from 'vitest';
import { PRICING_UNIT_IDS, PRICING_UNITS } from './pricing-units/index.ts';
import { isRec20Name, REC20_CODES } from './rec20-codes.ts';

// UN/ECE Recommendation 20, revision 11e.
describe('Recommendation 20 codes', () => {
  it('are the codes of the pricing units, packages apart', () => {
    const known: readonly string[] = Object.values(REC20_CODES);
    const codes = PRICING_UNIT_IDS.map((id) => PRICING_UNITS[id].code).filter(
      (code) => !code.startsWith('X'),
    );
    expect(codes.filter((code) => !known.includes(code))).toEqual([]);
  });

  it('know no other names', () => {
    expect(isRec20Name('cord')).toBe(false);
    expect(isRec20Name('board foot')).toBe(true);
  });
});
