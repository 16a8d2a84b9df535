import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { roundDown } from './round-down.ts';

it('goes down to whole leaves', () => {
  expect(
    operationFaults(roundDown, [
      { inputs: ['2.99', 1], gives: 2 },
      { inputs: ['0.3', '0.1'], gives: '0.3' },
    ]),
  ).toEqual([]);
  expect(roundDown.phrase(['2.99', '1'], {})).toBe('2.99, down to a multiple of 1');
});
