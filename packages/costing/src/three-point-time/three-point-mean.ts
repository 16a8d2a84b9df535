import { divide, type Figure, number, scale, sum } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';

/** How long a step takes at the least, most likely and at the most. */
export interface ThreePointTime {
  readonly low: Figure<'h'>;
  readonly likely: Figure<'h'>;
  readonly high: Figure<'h'>;
}

/**
 * Mean of the Beta-PERT distribution with lambda 4, in hours: (low + 4 likely + high) / 6
 * (Malcolm, Roseboom, Clark and Fazar, "Application of a Technique for Research and Development Program
 * Evaluation", 1959).
 * @param field path of the operation, for errors
 * @throws CostingInputError where the three are not in order
 */
export function threePointMean(label: string, time: ThreePointTime, field: string): Figure<'h'> {
  const { low, likely, high } = time;
  const order = (name: string, value: Figure<'h'>, why: string) =>
    new CostingInputError(
      `${field}.${name}`,
      `is ${value.value.toString()} h, ${why} than the likely ${likely.value.toString()} h`,
      'give the least, the likely and the greatest time in this order',
    );
  if (low.value.gt(likely.value)) throw order('runHoursLow', low, 'more');
  if (high.value.lt(likely.value)) throw order('runHoursHigh', high, 'less');
  const four = scale('4 times the likely time', likely, number(4));
  return divide(label, sum('low, 4 times likely and high', 'h', [low, four, high]), number(6));
}
