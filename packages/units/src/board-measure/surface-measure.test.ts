import { describe, expect, it } from 'vitest';
import { boardFeetFromSurfaceMeasure, surfaceMeasure, surfaceMeasures } from './surface-measure.ts';

describe('surface measure', () => {
  it('rounds before the thickness enters (AHEC web guide, 6 1/4 in x 8 ft x 2 in)', () => {
    const { exact, surfaceMeasure: whole } = surfaceMeasure({ widthIn: '6.25', lengthFt: 8 });
    expect(exact.toFixed(4)).toBe('4.1667');
    expect(boardFeetFromSurfaceMeasure(whole, 2).toString()).toBe('8');
  });

  it('counts thin stock as 1 in (NHLA Rules Book, from memory)', () => {
    expect(boardFeetFromSurfaceMeasure(4, '0.75').toString()).toBe('4');
  });

  // 6 in x 9 ft is 4 1/2 exactly. NHLA Rules Book, from memory.
  const half = { widthIn: 6, lengthFt: 9 };
  const plain = { widthIn: 8, lengthFt: 12 };

  it('rounds exact halves by turns, and boards between do not disturb the turn', () => {
    const whole = surfaceMeasures([half, plain, half, half], 'alternate').map((one) => one.surfaceMeasure);
    expect(whole.map(String)).toEqual(['5', '8', '4', '5']);
  });

  it('rounds exact halves up without the rule', () => {
    const whole = surfaceMeasures([half, half]).map((one) => one.surfaceMeasure);
    expect(whole.map(String)).toEqual(['5', '5']);
  });
});
