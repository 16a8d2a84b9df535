import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { difference } from './difference.ts';

it('takes the second from the first', () => {
  expect(
    operationFaults(difference, [
      { inputs: ['1', '0.9'], gives: '0.1' },
      { inputs: [2, 5], gives: -3 },
    ]),
  ).toEqual([]);
  expect(difference.phrase(['5 h', '2 h'], {})).toBe('5 h - 2 h');
});
