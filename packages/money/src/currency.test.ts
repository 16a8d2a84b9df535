import { describe, expect, it } from 'vitest';
import { CURRENCIES, CurrencyMismatchError, isCurrency, minorUnits } from './currency.ts';

// ISO 4217 list one, as the datasets/currency-codes repository carries it.
describe('currencies', () => {
  it.each([
    ['USD', 2],
    ['HUF', 2],
    ['VND', 0],
    ['BHD', 3],
    ['UYW', 4],
  ] as const)('%s has %i places', (currency, places) => {
    expect(minorUnits(currency)).toBe(places);
  });

  it('have codes of three letters and know no others', () => {
    expect(CURRENCIES.every((code) => /^[A-Z]{3}$/.test(code) && isCurrency(code))).toBe(true);
    expect(['eur', 'XAU', 'toString', ''].some(isCurrency)).toBe(false);
  });

  it('say where two met', () => {
    expect(new CurrencyMismatchError('EUR', 'USD', 'Oak').message).toContain('Oak: EUR and USD');
  });
});
