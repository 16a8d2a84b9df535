import { type Decimal, type DecimalLike, decimal, NotADecimalError } from '@scantling/decimals';

/** Thrown when a measure cannot be used: names the field, what is wrong with it and how to mend it. */
export class MeasureInputError extends Error {
  readonly code = 'measure-input';
  constructor(
    readonly field: string,
    readonly reason: string,
    readonly mend: string,
  ) {
    super(`${field} ${reason}: ${mend}`);
    this.name = 'MeasureInputError';
  }
}

function read(field: string, value: DecimalLike): Decimal {
  try {
    return decimal(value);
  } catch (error) {
    if (!(error instanceof NotADecimalError)) throw error;
    throw new MeasureInputError(field, `is "${error.text}"`, 'enter a number');
  }
}

/** The value as a decimal above 0. @throws MeasureInputError */
export function positive(field: string, value: DecimalLike): Decimal {
  const number = read(field, value);
  if (number.lte(0)) throw new MeasureInputError(field, `is ${number}`, 'enter a number above 0');
  return number;
}

/** The value as a decimal from `low` to `high`, both included. @throws MeasureInputError */
export function within(field: string, value: DecimalLike, low: number, high: number): Decimal {
  const number = read(field, value);
  if (number.lt(low) || number.gt(high)) {
    throw new MeasureInputError(field, `is ${number}`, `enter a number from ${low} to ${high}`);
  }
  return number;
}
