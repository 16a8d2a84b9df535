import { type Decimal, type DecimalLike, ZERO } from '@scantling/decimals';
import { positive } from '../input-error.ts';
import { boardFeet } from './board-feet.ts';
import { type BoardFace, type HalfRule, tallyRounder } from './surface-measure.ts';

/** Boards are measured green or after kiln drying; the tally must say which, since width shrinks. */
export type TallyState = 'green' | 'dry';

export interface TalliedBoard {
  /** Whole inches. */
  readonly widthIn: Decimal;
  /** Whole feet. */
  readonly lengthFt: Decimal;
  readonly boardFeet: Decimal;
}

export interface BundleTally {
  readonly state: TallyState;
  readonly boards: readonly TalliedBoard[];
  readonly boardFeet: Decimal;
}

/**
 * Tally of a bundle of boards of one thickness: width to the nearest inch, exact halves by turns, length always
 * down to the whole foot (American Hardwood Export Council, web guide, page "Measurement").
 * @throws MeasureInputError for a size that is not above 0, or a board under half an inch wide or under 1 ft long
 */
export function bundleTally(
  boards: readonly BoardFace[],
  nominalThicknessIn: DecimalLike,
  state: TallyState,
  rule: HalfRule = 'alternate',
): BundleTally {
  const round = tallyRounder(rule);
  const tallied = boards.map((board) => {
    const widthIn = positive('widthIn', round(positive('widthIn', board.widthIn)));
    const lengthFt = positive('lengthFt', positive('lengthFt', board.lengthFt).floor());
    return {
      widthIn,
      lengthFt,
      boardFeet: boardFeet({ thicknessIn: nominalThicknessIn, widthIn, lengthFt }),
    };
  });
  const total = tallied.reduce((sum, board) => sum.plus(board.boardFeet), ZERO);
  return { state, boards: tallied, boardFeet: total };
}
