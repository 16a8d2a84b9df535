import { type Decimal, type DecimalLike, decimal, NotADecimalError } from '@scantling/decimals';
import { CuttingInputError } from '../cutting-errors.ts';

/**
 * Lengths are worked with as whole millionths of the instance's unit: every decimal of six places, 1/64 in = 0.015625
 * among them, is one such number exactly, and sums of them stay exact below 2^53 (nine thousand million units).
 */
export const MILLIONTHS = 1_000_000;
const MOST_UNITS = 1_000_000;

type Reading = Readonly<{ field: string; isPositive?: boolean }>;

/** @throws CuttingInputError for anything but a decimal of 0 or more (or above 0) with at most six places */
export function readMillionths(value: DecimalLike, { field, isPositive = false }: Reading): number {
  let read: Decimal;
  try {
    read = decimal(value);
  } catch (error) {
    if (!(error instanceof NotADecimalError)) throw error;
    throw new CuttingInputError(field, 'is no number', 'Write it with digits and a point, such as 12.5.');
  }
  const least = isPositive ? 'above 0' : 'of 0 or more';
  const isTooSmall = isPositive ? read.lte(0) : read.lt(0);
  if (isTooSmall || read.gt(MOST_UNITS))
    throw new CuttingInputError(
      field,
      `cannot be ${read.toString()}`,
      `Enter a number ${least} and of at most 1 000 000.`,
    );
  const whole = read.times(MILLIONTHS);
  if (!whole.isInteger())
    throw new CuttingInputError(
      field,
      `has more than six decimal places: ${read.toString()}`,
      'Round it to six places; 1/64 in is 0.015625.',
    );
  return whole.toNumber();
}

/** Whole millionths as decimal text. */
export function writeMillionths(millionths: number): string {
  return decimal(millionths).div(MILLIONTHS).toFixed();
}

/** The greatest number that goes into all of them without a rest; 1 where there are none above 0. */
export function greatestCommonDivisor(numbers: Iterable<number>): number {
  let common = 0;
  for (const number of numbers) {
    let [left, right] = [common, number];
    while (right > 0) [left, right] = [right, left % right];
    common = left;
  }
  return common === 0 ? 1 : common;
}
