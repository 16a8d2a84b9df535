import { type Decimal, type DecimalLike, decimal, NotADecimalError } from '@scantling/decimals';

/** Thrown when an amount, rate or share cannot be used: names the field, what is wrong with it and the mend. */
export class MoneyInputError extends Error {
  readonly code = 'money-input';
  constructor(
    readonly field: string,
    readonly reason: string,
    readonly mend: string,
  ) {
    super(`${field} ${reason}: ${mend}`);
    this.name = 'MoneyInputError';
  }
}

/** The value as a decimal. @throws MoneyInputError */
export function number(field: string, value: DecimalLike): Decimal {
  try {
    return decimal(value);
  } catch (error) {
    if (!(error instanceof NotADecimalError)) throw error;
    throw new MoneyInputError(field, `is "${error.text}"`, 'enter a number');
  }
}

/** The value as a decimal of 0 or more. @throws MoneyInputError */
export function notNegative(field: string, value: DecimalLike): Decimal {
  const read = number(field, value);
  if (read.lt(0)) throw new MoneyInputError(field, `is ${read}`, 'enter 0 or more');
  return read;
}

/** The value as a decimal above 0. @throws MoneyInputError */
export function positive(field: string, value: DecimalLike): Decimal {
  const read = number(field, value);
  if (read.lte(0)) throw new MoneyInputError(field, `is ${read}`, 'enter a number above 0');
  return read;
}

/** The value as a fraction from 0 to 1, both included. @throws MoneyInputError */
export function fraction(field: string, value: DecimalLike): Decimal {
  const read = notNegative(field, value);
  if (read.gt(1))
    throw new MoneyInputError(field, `is ${read}`, 'enter a fraction from 0 to 1 (20 % is 0.2)');
  return read;
}
