import { decimal } from '@scantling/decimals';
import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { NoAnswerError } from './operation.ts';
import { quotient } from './quotient.ts';

it('divides the first by the second', () => {
  expect(operationFaults(quotient, [{ inputs: ['23.4', '0.72'], gives: '32.5' }])).toEqual([]);
  expect(quotient.phrase(['23.4 bd ft', '0.72'], {})).toBe('23.4 bd ft / 0.72');
});

it('has no answer for 0', () => {
  expect(() => quotient.evaluate([decimal(1), decimal(0)], {})).toThrow(NoAnswerError);
});
