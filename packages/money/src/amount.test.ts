import { describe, expect, it } from 'vitest';
import { amount, minorUnit, roundToMinorUnit, sumAmounts } from './amount.ts';
import { CurrencyMismatchError } from './currency.ts';

describe('amounts', () => {
  // Minor units of ISO 4217; ties away from zero as ROUND of ODF 1.3 part 4, 6.17.5.
  it.each([
    ['2.675', 'EUR', '2.68'],
    ['-2.675', 'EUR', '-2.68'],
    ['100.5', 'JPY', '101'],
    ['1.0005', 'KWD', '1.001'],
    ['1.00005', 'CLF', '1.0001'],
  ] as const)('round %s %s to %s', (value, currency, rounded) => {
    expect(roundToMinorUnit(value, currency).toString()).toBe(rounded);
  });

  it('round ties to even where a document did (IEEE 754 roundTiesToEven)', () => {
    expect(roundToMinorUnit('44.985', 'EUR', 'half-even').toString()).toBe('44.98');
  });

  it('know the smallest payable amount', () => {
    expect(minorUnit('EUR').toString()).toBe('0.01');
    expect(minorUnit('JPY').toString()).toBe('1');
  });

  it('add in one currency only', () => {
    expect(sumAmounts([amount('0.1', 'EUR'), amount('0.2', 'EUR')], 'EUR').value.toString()).toBe('0.3');
    expect(sumAmounts([], 'USD').value.toString()).toBe('0');
    expect(() => sumAmounts([amount(1, 'EUR'), amount(1, 'USD')], 'EUR')).toThrow(CurrencyMismatchError);
    expect(() => amount('ten', 'EUR')).toThrow('amount is "ten": enter a number');
  });
});
