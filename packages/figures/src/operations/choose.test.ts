import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { choose } from './choose.ts';

it('takes the third once the first reaches the second, else the fourth', () => {
  expect(
    operationFaults(choose, [
      { inputs: [100, 100, 5, 6], gives: 5 },
      { inputs: ['99.99', 100, 5, 6], gives: 6 },
    ]),
  ).toEqual([]);
  expect(choose.phrase(['99 bd ft', '100 bd ft', '5', '6'], {})).toBe(
    '5 once 99 bd ft reaches 100 bd ft, else 6',
  );
});
