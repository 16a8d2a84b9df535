import { expect, it } from 'vitest';
import { createSeededGenerator } from './seeded-generator.ts';

it('gives the same numbers for the same seed, from 0 to below 1, and spreads them', () => {
  const draw = (seed: number) => {
    const random = createSeededGenerator(seed);
    return Array.from({ length: 1000 }, random);
  };
  expect(draw(7)).toEqual(draw(7));
  expect(draw(7)).not.toEqual(draw(8));
  const numbers = draw(7);
  expect(numbers.every((number) => number >= 0 && number < 1)).toBe(true);
  expect(numbers.reduce((sum, number) => sum + number, 0) / 1000).toBeCloseTo(0.5, 1);
});
