import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { sum } from './sum.ts';

it('adds all its inputs, and nothing to nothing', () => {
  expect(
    operationFaults(sum, [
      { inputs: ['0.1', '0.2', '0.3'], gives: '0.6' },
      { inputs: [], gives: 0 },
    ]),
  ).toEqual([]);
  expect(sum.phrase(['1 h', '2 h'], {})).toBe('1 h + 2 h');
});
