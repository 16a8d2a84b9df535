import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from './parse-length.ts';
import { UnreadableLengthError } from './unreadable-length-error.ts';

// Expected values follow from 1 in = 25.4 mm exactly (NIST SP 811); the ways of writing are common practice, no source.
describe('parseLength', () => {
  it.each([
    ['23 5/8', '600.075'],
    ['23-5/8"', '600.075'],
    ['23 - 5/8 in', '600.075'],
    ['1\' 11 5/8"', '600.075'],
    ['1\'-11 5/8"', '600.075'],
    ['1′ 11 5/8″', '600.075'],
    ['1’ 11⅝”', '600.075'],
    ["1' 11 5/8''", '600.075'],
    ['1 ft 11 5/8 in', '600.075'],
    ['1ft 11⁄8in', '339.725'],
    ['600', '15240'],
    ['600 mm', '600'],
    ['60cm', '600'],
    ['0.75in', '19.05'],
    ['0,75 in.', '19.05'],
    ['.75', '19.05'],
    ['3/4', '19.05'],
    ['1/64"', '0.396875'],
    ['2.4 m', '2400'],
    ["8'", '2438.4'],
    ['8 feet', '2438.4'],
    ['1/3 in', '8.466667'],
    ['1250,5 mm', '1250.5'],
  ])('reads %s in a field of inches', (text, mm) => {
    expect(parseLength(text, 'in').toString()).toBe(mm);
  });

  it('gives a bare number the displayed unit', () => {
    expect(parseLength('600', 'mm').toString()).toBe('600');
    expect(parseLength('0', 'mm').toString()).toBe('0');
    expect(parseLength('18,5', 'mm').toString()).toBe('18.5');
  });

  it.each([
    ['', 'empty'],
    ['oak', 'no number'],
    ['12 ells', 'no unit "ells"'],
    ['3/0', 'fraction over 0'],
    ['-5', 'negative'],
    ['1,250', 'two ways'],
    ['600 mm 2 in', 'only feet and inches'],
    ['1\' 13"', '12 inches or more'],
    ['1 2 3', 'too many'],
    ['5" 6', 'only feet and inches'],
    ['12 -', 'no number'],
    ['1.2.3', 'only feet and inches'],
  ])('refuses "%s"', (text, reason) => {
    const act = () => parseLength(text, 'in');
    expect(act).toThrow(UnreadableLengthError);
    expect(act).toThrow(`"${text}"`);
    expect(act).toThrow(reason);
    expect(act).toThrow('write for example');
  });

  it('answers any text with a length of six places or its own error', () => {
    const texts = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789 ./,-\'"”′infm') }));
    fc.assert(
      fc.property(texts, (text) => {
        try {
          expect(parseLength(text, 'mm').decimalPlaces()).toBeLessThanOrEqual(6);
        } catch (error) {
          expect(error).toBeInstanceOf(UnreadableLengthError);
        }
      }),
      { numRuns: 500 },
    );
  });
});
