import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { greatest } from './greatest.ts';

it('takes the greatest of its inputs', () => {
  expect(operationFaults(greatest, [{ inputs: [3, '2.5', 7], gives: 7 }])).toEqual([]);
  expect(greatest.phrase(['3 h', '2 h'], {})).toBe('the greatest of 3 h and 2 h');
});
