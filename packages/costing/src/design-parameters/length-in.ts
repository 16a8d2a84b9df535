import { type DecimalLike, decimal } from '@scantling/decimals';
import { exactLength, formatLength, type LengthUnit } from '@scantling/units';

/**
 * A length as a design in the unit writes it. Where inches are not exact they are to the nearest 1/64, with the
 * millimetres beside.
 * @param mm may be below 0: what a formula comes to can be
 */
export function lengthIn(unit: LengthUnit, mm: DecimalLike): string {
  const length = decimal(mm);
  if (unit === 'mm') return length.toString();
  const exact = exactLength(length.abs().toString(), 'imperial');
  if (exact.endsWith('"')) return length.isNegative() ? `-${exact}` : exact;
  return `${formatLength(length, 'imperial', { denominator: 64 })} (${formatLength(length, 'metric')})`;
}
