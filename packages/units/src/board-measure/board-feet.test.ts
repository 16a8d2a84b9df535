import { describe, expect, it } from 'vitest';
import { boardFeet, boardFeetOfVolume } from './board-feet.ts';

describe('board feet', () => {
  it('are thickness x width x length / 12 (AHEC web guide, "Measurement")', () => {
    expect(boardFeet({ thicknessIn: 2, widthIn: 6, lengthFt: 8 }).toString()).toBe('8');
  });

  it('count thin stock as 1 in when sold, not in volume (NHLA Rules Book, from memory)', () => {
    const board = { thicknessIn: '0.5', widthIn: 6, lengthFt: 8 };
    expect(boardFeet(board).toString()).toBe('4');
    expect(boardFeetOfVolume(board).toString()).toBe('2');
  });

  it('names the size that cannot be', () => {
    expect(() => boardFeet({ thicknessIn: 1, widthIn: 0, lengthFt: 8 })).toThrow(
      'widthIn is 0: enter a number above 0',
    );
    expect(() => boardFeet({ thicknessIn: 'thick', widthIn: 6, lengthFt: 8 })).toThrow(
      'thicknessIn is "thick"',
    );
  });
});
