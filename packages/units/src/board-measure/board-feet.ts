import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { positive } from '../input-error.ts';

export interface BoardSize {
  /** Nominal thickness of the stock in inches (4/4 = 1). */
  readonly thicknessIn: DecimalLike;
  /** Inches: nominal for softwood, measured for hardwood. */
  readonly widthIn: DecimalLike;
  readonly lengthFt: DecimalLike;
}

/** Board feet as they are sold: stock under 1 in counts as 1 in (NHLA Rules Book, from memory). */
export const LEAST_COUNTED_THICKNESS_IN = decimal(1);

/**
 * Board feet a board is sold by: max(1, thickness in) x width in x length ft / 12.
 * The formula without the floor: American Hardwood Export Council, web guide, page "Measurement".
 * @throws MeasureInputError for a size that is not above 0
 */
export function boardFeet({ thicknessIn, widthIn, lengthFt }: BoardSize): Decimal {
  const thickness = positive('thicknessIn', thicknessIn);
  const counted = thickness.lt(LEAST_COUNTED_THICKNESS_IN) ? LEAST_COUNTED_THICKNESS_IN : thickness;
  return counted.times(positive('widthIn', widthIn)).times(positive('lengthFt', lengthFt)).div(12);
}

/**
 * Volume in board feet of wood that is there: no floor of 1 in, so it is what volume and weight follow.
 * @throws MeasureInputError for a size that is not above 0
 */
export function boardFeetOfVolume({ thicknessIn, widthIn, lengthFt }: BoardSize): Decimal {
  return positive('thicknessIn', thicknessIn)
    .times(positive('widthIn', widthIn))
    .times(positive('lengthFt', lengthFt))
    .div(12);
}
