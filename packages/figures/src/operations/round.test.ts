import { expect, it } from 'vitest';
import { operationFaults } from './check-operation.ts';
import { round } from './round.ts';

it('rounds half away from zero (ODF 1.3 part 4, 6.17.5 ROUND)', () => {
  expect(
    operationFaults(round, [
      { inputs: ['2.675'], gives: '2.68', settings: { places: '2' } },
      { inputs: ['-2.5'], gives: -3, settings: { places: '0' } },
      // In binary 1.265 is a little less than it is.
      { inputs: ['1.265'], gives: '1.27', settings: { places: '2' } },
    ]),
  ).toEqual([]);
  expect(round.phrase(['2.675 USD'], { places: '2' })).toBe('2.675 USD, rounded to 2 decimal places');
});
