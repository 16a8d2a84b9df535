import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { product } from './product.ts';

it('multiplies all its inputs', () => {
  expect(
    operationFaults(product, [
      { inputs: ['32.5', '7.8'], gives: '253.5' },
      { inputs: [2, 3, 4], gives: 24 },
    ]),
  ).toEqual([]);
  expect(product.phrase(['32.5 bd ft', '7.80'], {})).toBe('32.5 bd ft x 7.80');
});
