import { decimal } from '@scantling/decimals';
import { describe, expect, it } from 'vitest';
import { SOFTWOOD_SIZES, softwoodActualIn } from './softwood-sizes.ts';

// Sizes of PS 20 as in Engineering ToolBox, "Softwood Lumber - Dimensions".
describe('softwood sizes', () => {
  it('have the standard’s inches and millimetres', () => {
    const found = SOFTWOOD_SIZES.find((size) => size.name === '2x10');
    expect(found?.actualIn).toEqual(['1.5', '9.25']);
    expect(found?.actualMm).toEqual(['38', '235']);
  });

  it('follow the rule of thumb, and millimetres are the rounded inches', () => {
    for (const { nominalIn, actualIn, actualMm } of SOFTWOOD_SIZES) {
      for (const side of [0, 1] as const) {
        // 3 nominal is dressed to 2 1/2, which is the rule too.
        expect(softwoodActualIn(nominalIn[side]).toString()).toBe(actualIn[side]);
        expect(decimal(actualIn[side]).times('25.4').minus(actualMm[side]).abs().lte('0.5')).toBe(true);
      }
    }
  });

  it('dress 5/4 to 1 in and 6/4 to 1 1/4 in (lumber yard size table)', () => {
    expect(softwoodActualIn('1.25').toString()).toBe('1');
    expect(softwoodActualIn('1.5').toString()).toBe('1.25');
    expect(() => softwoodActualIn('0.25')).toThrow('nominalIn is 0');
  });
});
