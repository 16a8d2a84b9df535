import { decimal } from '@scantling/decimals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { APPROXIMATION_MARK, formatLength, INCH_DENOMINATORS } from './format-length.ts';
import { parseLength } from './parse-length.ts';

// Rounding to the nearest division is common practice, no source; the inch is 25.4 mm exactly (NIST SP 811).
describe('formatLength', () => {
  it.each([
    ['600.075', 16, '23 5/8"'],
    ['19.05', 64, '3/4"'],
    ['25.4', 8, '1"'],
    ['0', 16, '0"'],
    ['0.396875', 64, '1/64"'],
    ['-19.05', 16, '-3/4"'],
    ['600', 16, '≈ 23 5/8"'],
    ['18', 32, '≈ 23/32"'],
    ['25.3', 8, '≈ 1"'],
  ] as const)('shows %s mm in fractions of 1/%i', (mm, denominator, text) => {
    expect(formatLength(mm, 'imperial', { denominator })).toBe(text);
  });

  it('drops the mark within the stated tolerance and keeps it beyond', () => {
    expect(formatLength('600', 'imperial', { denominator: 16, tolerance: '0.075' })).toBe('23 5/8"');
    expect(formatLength('600', 'imperial', { denominator: 16, tolerance: '0.074' })).toBe('≈ 23 5/8"');
  });

  it('shows millimetres', () => {
    expect(formatLength('600', 'metric')).toBe('600 mm');
    expect(formatLength('19.05', 'metric', { places: 2 })).toBe('19.05 mm');
    expect(formatLength('19.05', 'metric')).toBe('≈ 19.1 mm');
    expect(formatLength('19.05', 'metric', { tolerance: '0.05' })).toBe('19.1 mm');
  });

  const denominators = fc.constantFrom(...INCH_DENOMINATORS);

  it('gives back every inch fraction unchanged', () => {
    fc.assert(
      fc.property(fc.nat(20_000), denominators, (parts, denominator) => {
        const mm = decimal(parts).times('25.4').div(denominator);
        const shown = formatLength(mm, 'imperial', { denominator });
        expect(shown.startsWith(APPROXIMATION_MARK)).toBe(false);
        expect(parseLength(shown, 'mm').eq(mm)).toBe(true);
      }),
    );
  });

  it('never differs by more than half a division, nor silently beyond the tolerance', () => {
    fc.assert(
      fc.property(fc.nat(5_000_000), denominators, fc.nat(400), (thousandths, denominator, tolerance) => {
        const mm = decimal(thousandths).div(1000);
        const allowed = decimal(tolerance).div(1000);
        const shown = formatLength(mm, 'imperial', { denominator, tolerance: allowed });
        const difference = parseLength(shown.replace(APPROXIMATION_MARK, ''), 'mm').minus(mm).abs();
        expect(difference.lte(decimal('12.7').div(denominator))).toBe(true);
        expect(shown.startsWith(APPROXIMATION_MARK)).toBe(difference.gt(allowed));
      }),
    );
  });
});
