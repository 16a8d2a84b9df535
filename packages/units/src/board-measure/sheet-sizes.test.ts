import { describe, expect, it } from 'vitest';
import { faceAreaM2, SHEET_SIZES, squareFeet } from './sheet-sizes.ts';

describe('sheet sizes', () => {
  it('give 32 square feet for 4 x 8 ft and 25 for 5 x 5 ft exactly (foot of 304.8 mm, NIST SP 811)', () => {
    const areas = SHEET_SIZES.filter(({ name }) => name.endsWith('ft')).map(({ lengthMm, widthMm }) =>
      squareFeet(faceAreaM2(lengthMm, widthMm)).toString(),
    );
    expect(areas).toEqual(['32', '25']);
  });

  it('are larger in the metric size than in the foot size', () => {
    expect(faceAreaM2(2440, 1220).gt(faceAreaM2('2438.4', '1219.2'))).toBe(true);
    expect(() => faceAreaM2(2440, -1)).toThrow('widthMm is -1');
  });
});
