import { decimal } from '@scantling/decimals';
import type { CuttingInstance } from './instance/cutting-instance.ts';
import type { ExactInstance } from './instance/exact-instance.ts';
import { readMillionths } from './instance/exact-length.ts';

/** Preferences in steps of money. */
export interface Preferences {
  readonly priceOfKind: number;
  /** What a free rectangle is worth, sides in millionths as it is left; null where offcuts are worth nothing. */
  readonly worthOf: ((length: number, width: number) => number) | null;
}

/** @throws CuttingInputError */
export function readPreferences(
  { preferences }: CuttingInstance,
  { isSheets, moneyStep }: ExactInstance,
): Preferences {
  const field = 'preferences';
  const price = readMillionths(preferences?.pricePerKindOfStock ?? 0, {
    field: `${field}.pricePerKindOfStock`,
  });
  const priceOfKind = price / moneyStep;
  const usable = preferences?.usableOffcuts;
  if (usable === undefined) return { priceOfKind, worthOf: null };
  const at = `${field}.usableOffcuts`;
  const leastLength = readMillionths(usable.leastLength, { field: `${at}.leastLength`, isPositive: true });
  const leastWidth = readMillionths(usable.leastWidth ?? 0, { field: `${at}.leastWidth` });
  readMillionths(usable.worth, { field: `${at}.worth` });
  // Worth per unit is a float here, since it only guides the search: the plan's money is worked out from its layouts.
  const rate = decimal(usable.worth).times(1_000_000).div(moneyStep).toNumber();
  const units = 1_000_000;
  const reaches = (a: number, b: number) => a >= leastLength && b >= leastWidth;
  return {
    priceOfKind,
    worthOf: isSheets
      ? (length, width) =>
          reaches(length, width) || reaches(width, length) ? rate * (length / units) * (width / units) : 0
      : (length) => (length >= leastLength ? (rate * length) / units : 0),
  };
}
