import { Decimal, type DecimalLike, decimal } from './decimal.ts';

/** Half away from zero to `places` decimal places (ODF 1.3 part 4, 6.17.5 ROUND). */
export function roundHalfAway(value: DecimalLike, places: number): Decimal {
  return decimal(value).toDecimalPlaces(places, Decimal.ROUND_HALF_UP);
}

/** Half to even to `places` decimal places (IEEE 754 roundTiesToEven); for reproducing sources that use it. */
export function roundHalfEven(value: DecimalLike, places: number): Decimal {
  return decimal(value).toDecimalPlaces(places, Decimal.ROUND_HALF_EVEN);
}

/** The least multiple of `step` (> 0) that is not below `value`. */
export function roundUpToMultiple(value: DecimalLike, step: DecimalLike): Decimal {
  return decimal(value).div(decimal(step)).ceil().times(decimal(step));
}

/** The greatest multiple of `step` (> 0) that is not above `value`. */
export function roundDownToMultiple(value: DecimalLike, step: DecimalLike): Decimal {
  return decimal(value).div(decimal(step)).floor().times(decimal(step));
}
