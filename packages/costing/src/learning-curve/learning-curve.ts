import type { DecimalLike } from '@scantling/decimals';
import { derive, difference, entered, type Figure, number, scale, sum } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';

export const LEARNING_MODELS = ['unit', 'cumulative-average'] as const;
/**
 * unit (Crawford): doubling the count takes the time of the nth UNIT to `rate` of it. cumulative-average
 * (Wright 1936): doubling takes the AVERAGE time of all units to `rate` of it. The same rate gives different
 * totals, so a curve always names its model.
 */
export type LearningModel = (typeof LEARNING_MODELS)[number];

export interface LearningCurve {
  readonly model: LearningModel;
  /** 0.8 is an 80 % curve; 1 is no learning. */
  readonly rate: DecimalLike;
}

/** A curve read into figures. */
export interface LearningFigures {
  readonly model: LearningModel;
  readonly rate: Figure<'ratio'>;
  /** b = log2(rate), at most 0. */
  readonly exponent: Figure<'ratio'>;
}

export interface LearningTimes {
  readonly exponent: Figure<'ratio'>;
  readonly firstUnit: Figure<'h'>;
  /** Hours for all units together. */
  readonly total: Figure<'h'>;
  readonly average: Figure<'h'>;
  /** Hours for the last of them. */
  readonly lastUnit: Figure<'h'>;
}

/** The unit model adds one term per unit; a run of more is no workshop's. */
const MOST_UNITS = 2000;
/** Terms per partial sum, so that a derivation stays readable and a spreadsheet's SUM within its arguments. */
const TERMS = 50;

/** @throws CostingInputError naming model or rate */
export function readLearningCurve(curve: LearningCurve, context: CostingContext): LearningFigures {
  const reader = learningReader(context);
  if (!LEARNING_MODELS.includes(curve.model))
    throw new CostingInputError(
      'model',
      `cannot be "${curve.model}"`,
      `choose ${LEARNING_MODELS.join(' or ')}`,
    );
  const rate = reader.read('rate', curve.rate, { label: 'learning rate', unit: 'ratio', above: 0, to: 1 });
  const exponent = derive('learning exponent, log2 of the rate', 'ratio', 'logarithm', [rate, number(2)]);
  return { model: curve.model, rate, exponent };
}

/** Hours for units 1 to n, from the hours of the first. @throws CostingInputError unless n is a whole number from 1 */
export function learningTotal(firstUnit: Figure<'h'>, n: number, curve: LearningFigures): Figure<'h'> {
  checkUnits(n);
  if (curve.model === 'cumulative-average')
    return scale(`hours for ${n} units`, firstUnit, power(n, curve), number(n, 'units'));
  const groups: Figure<'h'>[] = [];
  for (let from = 1; from <= n; from += TERMS) {
    const to = Math.min(from + TERMS - 1, n);
    const terms = Array.from({ length: to - from + 1 }, (_, index) =>
      unitTerm(firstUnit, from + index, curve),
    );
    groups.push(sum(`hours for units ${from} to ${to}`, 'h', terms));
  }
  return sum(`hours for ${n} units`, 'h', groups);
}

/** Hours for the nth unit alone. @throws CostingInputError unless n is a whole number from 1 */
export function learningUnit(firstUnit: Figure<'h'>, n: number, curve: LearningFigures): Figure<'h'> {
  checkUnits(n);
  if (curve.model === 'unit') return unitTerm(firstUnit, n, curve);
  if (n === 1) return firstUnit;
  return difference(
    `hours for unit ${n}`,
    learningTotal(firstUnit, n, curve),
    learningTotal(firstUnit, n - 1, curve),
  );
}

/** Total, average and last unit of a run of n. @throws CostingInputError */
export function learningTimes(
  input: LearningCurve & { readonly firstUnitHours: DecimalLike; readonly units: number },
  context: CostingContext,
): LearningTimes {
  const curve = readLearningCurve(input, context);
  const firstUnit = learningReader(context).read('firstUnitHours', input.firstUnitHours, {
    label: 'hours for the first unit',
    unit: 'h',
    above: 0,
  });
  const total = learningTotal(firstUnit, input.units, curve);
  return {
    exponent: curve.exponent,
    firstUnit,
    total,
    average: derive(`average of ${input.units} units`, 'h', 'quotient', [
      total,
      number(input.units, 'units'),
    ]),
    lastUnit: learningUnit(firstUnit, input.units, curve),
  };
}

export function checkUnits(n: number, field = 'units'): void {
  if (!Number.isInteger(n) || n < 1 || n > MOST_UNITS)
    throw new CostingInputError(field, `cannot be ${n}`, `enter a whole number from 1 to ${MOST_UNITS}`);
}

/** n^b. */
export function power(n: number, curve: LearningFigures): Figure<'ratio'> {
  return derive(`${n} to the learning exponent`, 'ratio', 'power', [number(n), curve.exponent]);
}

export function learningReader(context: CostingContext): LeafReader {
  return new LeafReader({
    keyPrefix: context.keyPrefix ?? 'learning-curve',
    currency: context.currency,
    source: context.source ?? entered(),
    subject: '',
  });
}

function unitTerm(firstUnit: Figure<'h'>, n: number, curve: LearningFigures): Figure<'h'> {
  return n === 1 ? firstUnit : scale(`hours for unit ${n}`, firstUnit, power(n, curve));
}
