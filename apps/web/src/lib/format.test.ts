import { unitWords } from '@scantling/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAmount, formatMoney, formatNumber, formatPercent } from './format.ts';

const us = { locale: 'en-US' };
const plain = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

describe('money', () => {
  // Minor units after ISO 4217: yen 0, US dollar 2, Kuwaiti dinar 3.
  it('has the places of its currency', () => {
    expect(formatMoney('1245.5', 'USD', us)).toBe('$1,245.50');
    expect(formatMoney('1245.5', 'JPY', us)).toBe('¥1,246');
    expect(plain(formatMoney('1.2345', 'KWD', us))).toBe('KWD 1.235');
  });

  it('is rounded half away from zero, on decimals', () => {
    // 1.005 has no exact float; the nearest one lies below and would give 1.00.
    expect(formatMoney('1.005', 'USD', us)).toBe('$1.01');
    expect(formatMoney('-1.005', 'USD', us)).toBe('\u2212$1.01');
    expect(formatMoney('-0.001', 'USD', us)).toBe('$0.00');
  });

  it('keeps every digit of amounts that no float holds', () => {
    expect(formatMoney('9007199254740993.01', 'USD', us)).toBe('$9,007,199,254,740,993.01');
    expect(formatMoney('12.345678', 'USD', { ...us, isFull: true })).toBe('$12.345678');
    expect(formatMoney('12', 'USD', { ...us, isFull: true })).toBe('$12.00');
  });

  it('reads back as the amount rounded to cents', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: -(10n ** 20n), max: 10n ** 20n }), (cents) => {
        const size = cents < 0n ? -cents : cents;
        const text = `${cents < 0n ? '-' : ''}${size / 100n}.${String(size % 100n).padStart(2, '0')}`;
        const read = formatMoney(text, 'EUR', us).replace(/[€,]/g, '').replace('\u2212', '-');
        expect(read).toBe(text);
      }),
    );
  });
});

describe('other units', () => {
  it('get sensible digits', () => {
    expect(formatAmount({ value: '32.5', unit: 'bd ft', currency: null }, us).text).toBe('32.5 bd ft');
    expect(formatAmount({ value: '600.396875', unit: 'mm', currency: null }, us).text).toBe('600.4 mm');
    expect(formatAmount({ value: '0.000123456', unit: 'ratio', currency: null }, us).text).toBe('0.000123');
    expect(formatAmount({ value: '1500', unit: 'h/year', currency: null }, us).text).toBe('1,500 h per year');
    expect(formatAmount({ value: '18', unit: 'year', currency: null }, us).text).toBe('18 years');
  });

  it('write rates of money with what lies below the cent', () => {
    const written = formatAmount({ value: '0.0425', unit: 'money/each', currency: 'USD' }, us);
    expect(written).toEqual({ number: '$0.0425', unit: 'per each', text: '$0.0425 per each' });
    expect(formatAmount({ value: '7.8', unit: 'money/bd ft', currency: 'USD' }, us).text).toBe(
      '$7.80 per bd ft',
    );
  });

  it('have the same places in a column that asks for them', () => {
    const hours = (value: string): string =>
      formatAmount({ value, unit: 'h', currency: null }, { ...us, places: 2 }).text;
    expect(['1', '1.25', '0.005'].map(hours)).toEqual(['1.00 h', '1.25 h', '0.01 h']);
  });

  it('follow the locale and use a true minus', () => {
    expect(plain(formatMoney('1245.5', 'EUR', { locale: 'de-DE' }))).toBe('1.245,50 €');
    expect(formatNumber('-1234.5', 2, us)).toBe('\u22121,234.5');
    expect(plain(formatPercent('0.1255', 1, us))).toBe('12.6 %');
  });

  it('refuse what is no number', () => {
    expect(() => formatNumber('twelve', 2)).toThrow('"twelve" is not a number');
  });

  it('are worded', () => {
    expect(unitWords('money/h')).toBe('per h');
    expect(unitWords('m2')).toBe('m²');
    expect(unitWords('ratio')).toBe('');
  });
});
