import { describe, expect, it } from 'vitest';
import { bundleTally } from './bundle-tally.ts';

// AHEC web guide, page "Measurement": nearest inch, halves by turns, length down.
describe('bundleTally', () => {
  it('rounds widths by turns and drops parts of a foot', () => {
    const tally = bundleTally(
      [
        { widthIn: '5.25', lengthFt: '8.5' },
        { widthIn: '6.5', lengthFt: '10' },
        { widthIn: '6.5', lengthFt: '10.99' },
      ],
      1,
      'dry',
    );
    expect(tally.boards.map((board) => `${board.widthIn}x${board.lengthFt}`)).toEqual([
      '5x8',
      '7x10',
      '6x10',
    ]);
    expect(tally.boardFeet.toFixed(4)).toBe('14.1667');
    expect(tally.state).toBe('dry');
  });

  it('refuses a board that rounds to nothing', () => {
    expect(() => bundleTally([{ widthIn: 6, lengthFt: '0.9' }], 1, 'green')).toThrow('lengthFt is 0');
  });

  it('is 0 for no boards', () => {
    expect(bundleTally([], 1, 'green').boardFeet.toString()).toBe('0');
  });
});
