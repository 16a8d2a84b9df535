import { decimal } from '@scantling/decimals';
import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { logarithm } from './logarithm.ts';
import { NoAnswerError } from './operation.ts';

it('takes the logarithm to a base', () => {
  expect(operationFaults(logarithm, [{ inputs: [1024, 2], gives: 10 }])).toEqual([]);
  expect(logarithm.phrase(['1024', '2'], {})).toBe('log of 1024 to base 2');
});

it('has no answer for 0 and below', () => {
  expect(() => logarithm.evaluate([decimal(0), decimal(2)], {})).toThrow(NoAnswerError);
});
