import { describe, expect, it } from 'vitest';
import { fromPercent, optionalDecimal, plainDecimal, toPercent } from './percent.ts';

describe('shares as percent', () => {
  it('goes there and back exactly', () => {
    for (const share of ['0', '1', '0.125', '0.333333', '0.0000001']) {
      expect(fromPercent(toPercent(share))).toBe(share);
    }
    expect(toPercent('0.29')).toBe('29');
    expect(fromPercent('7,5')).toBe('0.075');
  });

  it('leaves what is no number for the server to name', () => {
    expect(toPercent('a lot')).toBe('a lot');
    expect(fromPercent('12 or so')).toBe('12 or so');
    expect(fromPercent('')).toBe('');
  });
});

describe('typed numbers', () => {
  it('reads a decimal comma and grouping by spaces', () => {
    expect(plainDecimal(' 12,5 ')).toBe('12.5');
    expect(plainDecimal('1 249.90')).toBe('1249.90');
    expect(plainDecimal('0,125')).toBe('0.125');
  });

  it('does not guess what a comma before three digits means', () => {
    expect(plainDecimal('1,250')).toBe('1,250');
    expect(plainDecimal('1,249.90')).toBe('1,249.90');
  });

  it('reads an empty field as nothing', () => {
    expect(optionalDecimal('  ')).toBeNull();
    expect(optionalDecimal('3')).toBe('3');
  });
});
