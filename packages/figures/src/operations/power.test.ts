import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { power } from './power.ts';

it('raises the first to the second', () => {
  expect(
    operationFaults(power, [
      { inputs: [2, 10], gives: 1024 },
      { inputs: [4, '0.5'], gives: 2 },
    ]),
  ).toEqual([]);
  expect(power.phrase(['2', '10'], {})).toBe('2 to the power of 10');
});
