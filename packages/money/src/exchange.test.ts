import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amount } from './amount.ts';
import { type ExchangeRate, exchange, NoExchangeRateError, rateOn } from './exchange.ts';

// Invented rates. That a dated rate holds until the next one is common practice, no source.
const RATES: readonly ExchangeRate[] = [
  { from: 'EUR', to: 'USD', date: '2026-01-01', rate: '1.10' },
  { from: 'EUR', to: 'USD', date: '2026-03-01', rate: '1.20' },
  { from: 'USD', to: 'EUR', date: '2026-02-01', rate: '0.8' },
  { from: 'USD', to: 'EUR', date: '2026-03-01', rate: '0.5' },
];

describe('rateOn', () => {
  it.each([
    ['2026-01-01', '1.1', false],
    ['2026-01-31', '1.1', false],
    ['2026-02-15', '1.25', true],
    ['2026-03-01', '1.2', false],
    ['2026-12-31', '1.2', false],
  ])('finds the latest on %s', (date, rate, isInverse) => {
    const found = rateOn(RATES, 'EUR', 'USD', date);
    expect([found.rate.toString(), found.isInverse]).toEqual([rate, isInverse]);
  });

  it('needs no entry for the same currency', () => {
    expect(rateOn([], 'EUR', 'EUR', '2026-01-01').rate.toString()).toBe('1');
  });

  it('says which rate is missing', () => {
    const act = () => rateOn(RATES, 'EUR', 'USD', '2025-12-31');
    expect(act).toThrow(NoExchangeRateError);
    expect(act).toThrow('from EUR to USD on 2025-12-31: enter one dated 2025-12-31 or earlier');
    expect(() => rateOn(RATES, 'EUR', 'GBP', '2026-06-01')).toThrow(NoExchangeRateError);
    const zero: ExchangeRate = { from: 'EUR', to: 'USD', date: '2026-01-01', rate: 0 };
    expect(() => rateOn([zero], 'USD', 'EUR', '2026-01-01')).toThrow('rate is 0');
  });

  it('is found whatever the order of the list', () => {
    const lists = fc.shuffledSubarray([...RATES], { minLength: RATES.length });
    fc.assert(
      fc.property(lists, (rates) => {
        expect(rateOn(rates, 'USD', 'EUR', '2026-03-01').rate.toString()).toBe('0.5');
        expect(rateOn(rates, 'EUR', 'USD', '2026-02-28').rate.toString()).toBe('1.25');
      }),
    );
  });
});

describe('exchange', () => {
  it('keeps every place', () => {
    expect(exchange(amount('10.01', 'EUR'), 'USD', RATES, '2026-01-05').value.toString()).toBe('11.011');
  });
});
