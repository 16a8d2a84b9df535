import { Decimal as Base } from 'decimal.js';

/**
 * The one decimal type of the product: 34 significant digits (IEEE 754 decimal128), ties away from zero.
 * Set once here because decimal.js keeps its settings on the constructor, and a second constructor
 * would round differently without anyone seeing it.
 */
export const Decimal = Base.clone({
  precision: 34,
  rounding: Base.ROUND_HALF_UP,
  toExpNeg: -40,
  toExpPos: 60,
});
export type Decimal = Base;

/** What can be read as a decimal. Numbers are taken as written in decimal (0.1 is one tenth). */
export type DecimalLike = Base | string | number;

/** Thrown when a text is no decimal number. */
export class NotADecimalError extends Error {
  readonly code = 'not-a-decimal';
  constructor(readonly text: string) {
    super(`"${text}" is not a number`);
    this.name = 'NotADecimalError';
  }
}

/** Reads a finite decimal. @throws NotADecimalError for anything else, also for NaN and infinities. */
export function decimal(value: DecimalLike): Base {
  // Decimals never change, so one that is read already stands for itself.
  if (value instanceof Decimal && value.isFinite()) return value;
  let read: Base;
  try {
    read = new Decimal(value);
  } catch {
    throw new NotADecimalError(String(value));
  }
  if (!read.isFinite()) throw new NotADecimalError(String(value));
  return read;
}

export const ZERO = decimal(0);
export const ONE = decimal(1);
