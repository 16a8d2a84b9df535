import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { least } from './least.ts';

it('takes the least of its inputs', () => {
  expect(operationFaults(least, [{ inputs: [3, '2.5', 7], gives: '2.5' }])).toEqual([]);
  expect(least.phrase(['3 h', '2 h'], {})).toBe('the least of 3 h and 2 h');
});
