import { recalculate, toTable } from '@scantling/figures';
import { boardFeet } from '@scantling/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardTally, type CountedBoards } from './board-tally.ts';

const context = { currency: 'EUR' } as const;
const tally = (boards: readonly CountedBoards[], rounding: 'exact' | 'surface-measure' = 'exact') =>
  boardTally(boards, rounding, context);
const board = (changes: Partial<CountedBoards> = {}): CountedBoards => ({
  count: 1,
  thicknessIn: 2,
  widthIn: '6.25',
  lengthFt: 8,
  ...changes,
});

describe('the board feet of a tally', () => {
  it('round surface measure before the thickness', () => {
    // American Hardwood Export Council, web guide to grading sawn lumber, page "Measurement".
    const { lines, total } = tally([board()], 'surface-measure');
    expect(lines.map((line) => line.surface.value.toString())).toEqual(['4']);
    expect([total.value.toString(), total.unit]).toEqual(['8', 'bd ft']);
  });

  it('count whole feet of length only where they are graded', () => {
    const long = board({ thicknessIn: 1, widthIn: 12, lengthFt: '8.9' });
    expect(tally([long], 'surface-measure').total.value.toString()).toBe('8');
    expect(tally([long]).total.value.toString()).toBe('8.9');
  });

  it('count stock under an inch as an inch', () => {
    // 10 pieces of nominal 1 x 6, 8 ft: 40 board feet (definition of the board foot).
    const thin = board({ count: 10, thicknessIn: '0.75', widthIn: 6 });
    expect(tally([thin]).total.value.toString()).toBe('40');
  });

  it('are the sum of the boards, and follow from the leaves shown', () => {
    const size = fc.integer({ min: 1, max: 400 }).map((n) => n / 16);
    const anyBoard = fc.record({
      count: fc.integer({ min: 1, max: 40 }),
      thicknessIn: size,
      widthIn: size,
      lengthFt: size,
    });
    fc.assert(
      fc.property(fc.array(anyBoard, { minLength: 1, maxLength: 6 }), (boards) => {
        const { total } = tally(boards);
        const expected = boards.reduce((all, one) => all + boardFeet(one).times(one.count).toNumber(), 0);
        expect(total.value.toNumber()).toBeCloseTo(expected, 6);
        const { ids, figures } = toTable({ total }, { withDerivations: true });
        expect(recalculate(figures).get(ids.total)?.toString()).toBe(total.value.toString());
      }),
    );
  });

  it('name the board and the field that is wrong', () => {
    expect(() => tally([board(), board({ lengthFt: '-1' })])).toThrow('boards.1.lengthFt cannot be -1');
    expect(() => tally([board({ count: '1.5' })])).toThrow('boards.0.count cannot be 1.5');
  });
});
