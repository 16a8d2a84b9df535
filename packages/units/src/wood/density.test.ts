import { describe, expect, it } from 'vitest';
import {
  cubicFeet,
  densityKgM3,
  densityLbFt3,
  densityLbFt3FromOvenDry,
  lbPerBoardFoot,
  specificGravityAt,
  weightKg,
  weightLb,
} from './density.ts';

describe('density', () => {
  it('is 448 kg/m3 and 27.97 lb/ft3 for G 0.40 at 12 % (Wood Handbook GTR-190 ch. 4, University of Missouri page)', () => {
    expect(densityKgM3('0.40').toString()).toBe('448');
    // The page cuts 27.96864 off after three places.
    expect(densityLbFt3('0.40', 12).toDecimalPlaces(3, 1).toString()).toBe('27.968');
  });

  it('from oven-dry gravity equals the plain formula without moisture (Engineering ToolBox)', () => {
    expect(densityLbFt3FromOvenDry('0.5', 0).toString()).toBe('31.2');
  });

  it('leaves specific gravity as it is at fibre saturation (Wood Handbook ch. 4, from memory)', () => {
    expect(specificGravityAt('0.51', 30).toString()).toBe('0.51');
    expect(specificGravityAt('0.51', 12).gt('0.51')).toBe(true);
  });

  it('weighs a board the same by volume and by board feet', () => {
    const byVolume = weightKg('0.002359737216', 616).div('0.45359237');
    expect(byVolume.minus(lbPerBoardFoot(616)).abs().lt('1e-30')).toBe(true);
    expect(cubicFeet(12).toString()).toBe('1');
    expect(weightLb(2, '38.5').toString()).toBe('77');
  });

  it('names what cannot be', () => {
    expect(() => densityKgM3(0)).toThrow('specificGravity is 0');
    expect(() => specificGravityAt('0.5', 31)).toThrow('moisturePercent is 31: enter a number from 0 to 30');
  });
});
