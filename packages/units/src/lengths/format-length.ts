import { type Decimal, type DecimalLike, decimal, roundHalfAway } from '@scantling/decimals';
import { MM_PER_INCH } from '../conversions.ts';

export type LengthSystem = 'metric' | 'imperial';
/** The divisions of an inch that rules and tapes carry. */
export const INCH_DENOMINATORS = [8, 16, 32, 64] as const;
export type InchDenominator = (typeof INCH_DENOMINATORS)[number];

export interface LengthFormat {
  /** Finest inch fraction shown; 16 when absent. */
  readonly denominator?: InchDenominator;
  /** Largest difference in mm that may be shown without the mark of approximation; 0 when absent. */
  readonly tolerance?: DecimalLike;
  /** Decimal places of a millimetre in the metric system; 1 when absent. */
  readonly places?: number;
}

/** Stands before a length that the shown value misses by more than the tolerance. */
export const APPROXIMATION_MARK = '≈';

function inches(mm: Decimal, denominator: InchDenominator): { text: string; shownMm: Decimal } {
  const parts = roundHalfAway(mm.div(MM_PER_INCH).times(denominator), 0);
  const whole = parts.div(denominator).trunc();
  let numerator = parts.minus(whole.times(denominator)).toNumber();
  let lowest: number = denominator;
  while (numerator !== 0 && numerator % 2 === 0) {
    numerator /= 2;
    lowest /= 2;
  }
  const fraction = numerator === 0 ? '' : `${numerator}/${lowest}`;
  const text = whole.isZero() && fraction !== '' ? fraction : `${whole} ${fraction}`.trim();
  return { text: `${text}"`, shownMm: parts.div(denominator).times(MM_PER_INCH) };
}

/**
 * Writes a length to the nearest tenth of a millimetre (`600.1 mm`) or the nearest inch fraction
 * (`23 5/8"`), half away from zero. What differs from the length by more than the tolerance carries the
 * mark of approximation, so nothing is rounded silently.
 * @param mm length in millimetres
 */
export function formatLength(mm: DecimalLike, system: LengthSystem, format: LengthFormat = {}): string {
  const length = decimal(mm);
  const size = length.abs();
  const places = format.places ?? 1;
  const shown =
    system === 'imperial'
      ? inches(size, format.denominator ?? 16)
      : { text: `${roundHalfAway(size, places)} mm`, shownMm: roundHalfAway(size, places) };
  const isNear = shown.shownMm
    .minus(size)
    .abs()
    .lte(decimal(format.tolerance ?? 0));
  const sign = length.isNegative() && !shown.shownMm.isZero() ? '-' : '';
  return `${isNear ? '' : `${APPROXIMATION_MARK} `}${sign}${shown.text}`;
}
