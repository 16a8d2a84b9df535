import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { same } from './same.ts';

it('takes its input as it is', () => {
  expect(operationFaults(same, [{ inputs: ['12.5'], gives: '12.5' }])).toEqual([]);
  expect(same.phrase(['12.5 h'], {})).toBe('12.5 h');
});
