import { describe, expect, it } from 'vitest';
import { boardFeetToBuy, GRADE_IDS, GRADES, gradeRequirement, gradeYield } from './grades.ts';

// AHEC, "Summary of US hardwood lumber grades".
describe('grades', () => {
  it('ask for the chart’s cutting units and cuttings', () => {
    const fas = gradeRequirement('FAS', 11);
    expect([fas.unitsInBoard, fas.cuttingUnits, fas.cuttings].map(String)).toEqual(['132', '110', '2']);
    const common = gradeRequirement('No1C', 7);
    expect([common.cuttingUnits, common.cuttings].map(String)).toEqual(['56', '2']);
    expect(gradeRequirement('No3A', 7).cuttings).toBeNull();
  });

  it('never yield more as they go down, nor ask for larger boards', () => {
    const falls = (values: number[]) =>
      values.every((value, at) => at === 0 || value <= (values[at - 1] ?? 0));
    expect(falls(GRADE_IDS.map((id) => gradeYield(id).toNumber()))).toBe(true);
    expect(falls(GRADE_IDS.map((id) => Number(GRADES[id].minimumWidthIn)))).toBe(true);
    expect(falls(GRADE_IDS.map((id) => Number(GRADES[id].minimumLengthFt)))).toBe(true);
  });

  it('buy what yields the need', () => {
    for (const id of GRADE_IDS) {
      expect(boardFeetToBuy(20, id).times(gradeYield(id)).toFixed(20)).toBe(`20.${'0'.repeat(20)}`);
    }
  });

  it('refuse a board without surface', () => {
    expect(() => gradeRequirement('FAS', 0)).toThrow('surfaceMeasure is 0: enter a number from 1 to 1000');
  });
});
