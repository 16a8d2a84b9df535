import { decimal } from '@scantling/decimals';
import { describe, expect, it } from 'vitest';
import { densityKgM3, lbPerBoardFoot, specificGravityAt } from './density.ts';
import { movementCoefficient } from './movement.ts';
import { findSpecies, SPECIES } from './species-table.ts';

// Wood Handbook GTR-190 tables 4-3, 5-3a, 13-5 checked against each other.
describe('species', () => {
  it('stand once each', () => {
    expect(new Set(SPECIES.map((one) => one.id)).size).toBe(20);
    expect(findSpecies('black-cherry')?.gravityAt12).toBe('0.50');
    expect(findSpecies('brass')).toBeUndefined();
  });

  it('have a gravity at 12 % near the one the green gravity leads to (0.035; the handbook itself differs by that for basswood)', () => {
    for (const { id, gravityGreen, gravityAt12 } of SPECIES) {
      const difference = specificGravityAt(gravityGreen, 12).minus(gravityAt12).abs();
      expect([id, difference.lte('0.035')]).toEqual([id, true]);
    }
  });

  it('have a coefficient near the one their shrinkage leads to, species that stand for a group apart', () => {
    const groups = ['northern-red-oak', 'white-oak'];
    for (const { id, shrinkagePercent, movementTangential } of SPECIES.filter(
      (one) => !groups.includes(one.id),
    )) {
      const derived = movementCoefficient(shrinkagePercent[1]);
      expect([id, derived.div(movementTangential).minus(1).abs().lt('0.4')]).toEqual([id, true]);
    }
  });

  it('weigh 3.50 lb per board foot as white ash and 1.86 as western redcedar (worked from the table)', () => {
    const weight = (id: string) => lbPerBoardFoot(densityKgM3(decimal(findSpecies(id)?.gravityAt12 ?? 0)));
    expect(weight('white-ash').toFixed(1)).toBe('3.5');
    expect(weight('western-redcedar').toFixed(2)).toBe('1.86');
  });
});
