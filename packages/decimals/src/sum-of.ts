import { type Decimal, type DecimalLike, decimal, ZERO } from './decimal.ts';

/** The values added; 0 for none. @throws NotADecimalError */
export function sumOf(values: readonly DecimalLike[]): Decimal {
  return values.reduce<Decimal>((all, value) => all.plus(decimal(value)), ZERO);
}
