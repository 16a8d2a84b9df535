import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { roundUp } from './round-up.ts';

it('goes up to whole packs and stays on them', () => {
  expect(
    operationFaults(roundUp, [
      { inputs: [101, 50], gives: 150 },
      { inputs: [100, 50], gives: 100 },
      { inputs: ['0.3', '0.1'], gives: '0.3' },
    ]),
  ).toEqual([]);
  expect(roundUp.phrase(['101 each', '50 each'], {})).toBe('101 each, up to a multiple of 50 each');
});
