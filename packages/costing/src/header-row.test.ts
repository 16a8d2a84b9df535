import { describe, expect, it } from 'vitest';
import { findHeaders } from './header-row.ts';

describe('the row of the headers', () => {
  const rows = [['Prices of spring'], ['', 'without tax'], ['Kennung', 'Wert'], ['A', '1'], ['B', '']];

  it('is the first that fits', () => {
    expect(findHeaders(rows, (cells) => cells.includes('A'))).toBe(3);
  });

  it('is the first of the fullest where none fits', () => {
    expect(findHeaders(rows, () => false)).toBe(2);
    expect(findHeaders([], () => false)).toBe(0);
  });
});
