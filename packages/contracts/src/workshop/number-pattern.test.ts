import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  numberPatternSchema,
  numberPatternsSchema,
  STARTING_NUMBER_PATTERNS,
  startsAnewEachYear,
  writeNumber,
} from './number-pattern.ts';

const faultOf = (pattern: string) => numberPatternSchema.safeParse(pattern).error?.issues[0]?.message;

describe('a pattern of numbers', () => {
  it('is written with year and counter', () => {
    expect(writeNumber('Q-{year}-{0000}', { year: 2026, count: 7 })).toBe('Q-2026-0007');
    expect(writeNumber('{0}', { year: 2026, count: 12 })).toBe('12');
    expect(writeNumber('{year}/{00} R', { year: 2026, count: 123 })).toBe('2026/123 R');
  });

  it.each([
    ['Q-{year}', 'has no counter'],
    ['{0}-{00}', 'has more than one counter'],
    ['{year}{year}-{0}', 'has the year more than once'],
    ['Q-{month}-{0}', 'has a character that a number cannot carry'],
    ['Q\n{0}', 'has a character that a number cannot carry'],
    ['<b>{0}', 'has a character that a number cannot carry'],
  ])('%j %s', (pattern, message) => {
    expect(faultOf(pattern)).toBe(message);
  });

  it('gives no number twice', () => {
    const pattern = fc
      .tuple(
        fc.constantFrom('', 'Q', '1', '20'),
        fc.constantFrom('', '{year}'),
        fc.constantFrom('{0}', '{000}'),
      )
      .map((parts) => parts.join(''));
    const issue = fc.record({
      year: fc.integer({ min: 2000, max: 2100 }),
      count: fc.integer({ min: 1, max: 1e6 }),
    });
    fc.assert(
      fc.property(pattern, issue, issue, (given, one, other) => {
        const isSame = one.count === other.count && (one.year === other.year || !startsAnewEachYear(given));
        expect(writeNumber(given, one) === writeNumber(given, other)).toBe(isSame);
      }),
    );
  });

  it('belongs to one kind of paper', () => {
    expect(numberPatternsSchema.safeParse(STARTING_NUMBER_PATTERNS).success).toBe(true);
    const alike = { ...STARTING_NUMBER_PATTERNS, receipt: 'inv-{year}-{00}' };
    const issue = numberPatternsSchema.safeParse(alike).error?.issues[0];
    expect([issue?.path, issue?.message]).toEqual([
      ['receipt'],
      'gives the same numbers as the pattern of invoice',
    ]);
  });
});
