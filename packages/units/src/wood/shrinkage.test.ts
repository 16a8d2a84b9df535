import { describe, expect, it } from 'vitest';
import {
  shrinkagePercent,
  softwoodLumberShrinkage,
  softwoodWidthAt,
  widthByRuleOfThumb,
} from './shrinkage.ts';

describe('shrinkage', () => {
  it('is nothing when green and whole when oven-dry (Wood Handbook ch. 4, from memory)', () => {
    expect(shrinkagePercent('7.8', 30).toString()).toBe('0');
    expect(shrinkagePercent('7.8', 0).toString()).toBe('7.8');
  });

  it('rounds to the PS 20-70 factors at 15 %, 2.80 and 2.35 (FPL-RP-489)', () => {
    const { widthPercent, thicknessPercent } = softwoodLumberShrinkage(15);
    expect(widthPercent.minus('2.80').abs().lt('0.01')).toBe(true);
    expect(thicknessPercent.minus('2.35').abs().lt('0.01')).toBe(true);
    expect(() => softwoodLumberShrinkage(20)).toThrow('moisturePercent is 20: enter a number from 8 to 19');
  });

  it('changes a width there and back', () => {
    const dry = softwoodWidthAt('13.25', 19, 10);
    expect(softwoodWidthAt(dry, 10, 19).minus('13.25').abs().lt('1e-30')).toBe(true);
    expect(widthByRuleOfThumb(100, 20, 15).toString()).toBe('99');
  });
});
