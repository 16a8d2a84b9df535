import { describe, expect, it } from 'vitest';
import { canTry, leafSuffix, leafText, leafWords, readLeaf } from './leaf-text.ts';

const source = { kind: 'shop-rate', text: 'record' } as const;
const share = { id: 'material/ash/yield', label: 'yield', unit: 'ratio', currency: null, source } as const;
const length = { id: 'bill/part leg/length', label: 'length', unit: 'mm', currency: null, source } as const;
const price = {
  id: 'price/y/A/board-foot/0',
  label: 'price',
  unit: 'money/bd ft',
  currency: 'USD',
  source,
} as const;

describe('another value of a leaf, as it is typed', () => {
  it('is a percentage for a share', () => {
    expect([leafText(share, '0.62', 'metric'), leafSuffix(share, 'metric')]).toEqual(['62', '%']);
    expect(readLeaf(share, '72,5 %', 'metric')).toEqual({ value: '0.725' });
    expect(readLeaf(share, '120', 'metric')).toMatchObject({
      problem: { message: 'cannot be more than the whole' },
    });
  });

  it('is a length in the system of the sheet, exactly', () => {
    expect(readLeaf(length, '23 5/8"', 'metric')).toEqual({ value: '600.075' });
    expect(readLeaf(length, '24', 'imperial')).toEqual({ value: '609.6' });
    expect(leafText(length, '609.6', 'imperial')).toContain('24');
    expect(readLeaf(length, 'long', 'metric')).toMatchObject({
      problem: { mend: expect.stringContaining('600') },
    });
  });

  it('is a plain number in its unit otherwise', () => {
    expect(leafSuffix(price, 'metric')).toBe('USD per bd ft');
    expect(readLeaf(price, '6,50', 'metric')).toEqual({ value: '6.5' });
    expect(readLeaf(price, '', 'metric')).toHaveProperty('problem');
    expect(leafWords(price, '6.5', 'metric', 'en')).toBe('$6.50 per bd ft');
  });

  it('is not asked for where a value holds by definition', () => {
    expect(canTry({ ...share, source: { kind: 'definition', text: 'x' } })).toBe(false);
    expect(canTry(share)).toBe(true);
  });
});
