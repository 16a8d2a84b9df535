import { expect, it } from 'vitest';
import { sumOf } from './sum-of.ts';

it('adds what floats would not, and nothing to 0', () => {
  expect(sumOf(['0.1', '0.2', 0]).toString()).toBe('0.3');
  expect(sumOf([]).toString()).toBe('0');
});
