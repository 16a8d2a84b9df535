import { type Decimal, type DecimalLike, decimal, roundHalfAway } from '@scantling/decimals';
import { positive } from '../input-error.ts';

export interface BoardFace {
  readonly widthIn: DecimalLike;
  readonly lengthFt: DecimalLike;
}

export interface SurfaceMeasure {
  /** Whole feet counted; a part of a foot is dropped before anything else. */
  readonly countedLengthFt: Decimal;
  /** Width (with its fraction) x counted length / 12, in square feet. */
  readonly exact: Decimal;
  /** Rounded to a whole number. */
  readonly surfaceMeasure: Decimal;
}

/** `up`: an exact half always counts as one. `alternate`: first up, then down, and so on through a tally. */
export type HalfRule = 'up' | 'alternate';

/** Rounds a tally's values to whole numbers one after the other; only exact halves see the rule. */
export function tallyRounder(rule: HalfRule): (value: Decimal) => Decimal {
  let isNextUp = true;
  return (value) => {
    const isHalf = value.minus(value.floor()).eq('0.5');
    if (!isHalf || rule === 'up') return roundHalfAway(value, 0);
    const rounded = isNextUp ? value.ceil() : value.floor();
    isNextUp = !isNextUp;
    return rounded;
  };
}

function measure({ widthIn, lengthFt }: BoardFace, round: (value: Decimal) => Decimal): SurfaceMeasure {
  const countedLengthFt = positive('lengthFt', lengthFt).floor();
  const exact = positive('widthIn', widthIn).times(countedLengthFt).div(12);
  return { countedLengthFt, exact, surfaceMeasure: round(exact) };
}

/**
 * Surface measure of boards in square feet, in the order of the tally (American Hardwood Export Council, web
 * guide, page "Measurement"; exact halves by turns: NHLA Rules Book, from memory).
 * @throws MeasureInputError for a size that is not above 0
 */
export function surfaceMeasures(boards: readonly BoardFace[], rule: HalfRule = 'up'): SurfaceMeasure[] {
  const round = tallyRounder(rule);
  return boards.map((board) => measure(board, round));
}

/**
 * Surface measure of one board, an exact half rounded up.
 * @throws MeasureInputError for a size that is not above 0
 */
export function surfaceMeasure(board: BoardFace): SurfaceMeasure {
  return measure(board, tallyRounder('up'));
}

/**
 * Board feet from surface measure, which is rounded before the thickness enters (same source).
 * @param nominalThicknessIn under 1 in counts as 1 in (NHLA Rules Book, from memory)
 */
export function boardFeetFromSurfaceMeasure(surface: DecimalLike, nominalThicknessIn: DecimalLike): Decimal {
  const thickness = positive('nominalThicknessIn', nominalThicknessIn);
  return decimal(surface).times(thickness.lt(1) ? 1 : thickness);
}
