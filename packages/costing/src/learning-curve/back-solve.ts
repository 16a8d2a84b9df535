import type { DecimalLike } from '@scantling/decimals';
import { derive, difference, type Figure, number, scale, share } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import type { CostingContext } from '../leaf-reader.ts';
import {
  checkUnits,
  type LearningCurve,
  type LearningFigures,
  learningReader,
  power,
  readLearningCurve,
} from './learning-curve.ts';

/** A unit of the run and its hours: of that unit alone, or the average up to it, as the function says. */
export interface KnownTime {
  readonly unit: number;
  readonly hours: DecimalLike;
}

/**
 * Hours of the first unit that lead to the known hours of the nth unit alone, under either model.
 * @throws CostingInputError
 */
export function firstUnitFrom(known: LearningCurve & KnownTime, context: CostingContext): Figure<'h'> {
  checkUnits(known.unit, 'unit');
  const curve = readLearningCurve(known, context);
  const hours = learningReader(context).read('hours', known.hours, {
    label: `hours for unit ${known.unit}`,
    unit: 'h',
    above: 0,
  });
  return derive('hours for the first unit', 'h', 'quotient', [hours, unitFactor(known.unit, curve)]);
}

/**
 * The learning rate between two known times: 2^(log(later / earlier) / log(n2 / n1)). Times of units under
 * the unit model, averages up to a unit under the cumulative-average model.
 * @throws CostingInputError
 */
export function learningRateFrom(
  earlier: KnownTime,
  later: KnownTime,
  context: CostingContext,
): Figure<'ratio'> {
  checkUnits(earlier.unit, 'earlier.unit');
  checkUnits(later.unit, 'later.unit');
  if (later.unit <= earlier.unit)
    throw new CostingInputError(
      'later.unit',
      'is not after the earlier one',
      `enter more than ${earlier.unit}`,
    );
  const reader = learningReader(context);
  const read = (field: 'earlier' | 'later', known: KnownTime) =>
    reader.read(`${field}.hours`, known.hours, { label: `hours at unit ${known.unit}`, unit: 'h', above: 0 });
  const fall = share('later over earlier hours', read('later', later), read('earlier', earlier));
  const doublings = derive('doublings between them', 'ratio', 'logarithm', [
    share('later over earlier unit', number(later.unit), number(earlier.unit)),
    number(2),
  ]);
  const exponent = derive('learning exponent', 'ratio', 'quotient', [
    derive('log2 of the fall', 'ratio', 'logarithm', [fall, number(2)]),
    doublings,
  ]);
  return derive('learning rate', 'ratio', 'power', [number(2), exponent]);
}

/** The nth unit alone over the first. */
function unitFactor(n: number, curve: LearningFigures): Figure<'ratio'> {
  const label = `unit ${n} over the first`;
  if (curve.model === 'unit' || n === 1) return scale(label, power(n, curve));
  const upTo = (count: number) => scale(`${count} units over the first`, power(count, curve), number(count));
  return difference(label, upTo(n), upTo(n - 1));
}
