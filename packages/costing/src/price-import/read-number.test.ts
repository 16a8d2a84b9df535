import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readNumber } from './read-number.ts';

it.each([
  ['1250.50', 'point', '1250.5'],
  ['1,250.50', 'point', '1250.5'],
  ['€ 1.250,50', 'comma', '1250.5'],
  ['12,50 EUR', 'comma', '12.5'],
  ["1'250.00", 'point', '1250'],
  ['1 250,5', 'comma', '1250.5'],
  ['.75', 'point', '0.75'],
  ['0', 'point', '0'],
  ['007', 'point', '7'],
] as const)('reads %j with a decimal %s', (text, mark, expected) => {
  expect(readNumber(text, mark)).toBe(expected);
});

it.each([
  ['12,50', 'point'],
  ['12.50', 'comma'],
  ['1,25,000', 'point'],
  ['-3', 'point'],
  ['1.2.3', 'point'],
  ['on request', 'point'],
  ['', 'point'],
  ['1e3', 'point'],
] as const)('does not guess what %j means with a decimal %s', (text, mark) => {
  expect(readNumber(text, mark)).toBeNull();
});

it('reads what is written in groups of three, whatever the marks', () => {
  fc.assert(
    fc.property(fc.nat(999_999_999), fc.nat(99), fc.boolean(), (whole, cents, isComma) => {
      const [group, mark] = isComma ? ['.', ','] : [',', '.'];
      const written = `${String(whole).replace(/\B(?=(\d{3})+$)/g, group)}${mark}${String(cents).padStart(2, '0')}`;
      const read = readNumber(written, isComma ? 'comma' : 'point');
      expect(Math.round(Number(read) * 100)).toBe(whole * 100 + cents);
    }),
  );
});
