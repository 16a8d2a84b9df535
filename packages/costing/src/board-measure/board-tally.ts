import type { DecimalLike } from '@scantling/decimals';
import {
  constant,
  derive,
  entered,
  type Figure,
  greatest,
  number,
  round,
  roundDown,
  scale,
  sum,
} from '@scantling/figures';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';

/** Boards of one size. */
export interface CountedBoards {
  readonly count: DecimalLike;
  /** Nominal thickness in inches (4/4 is 1). */
  readonly thicknessIn: DecimalLike;
  /** Inches: nominal for softwood, measured for hardwood. */
  readonly widthIn: DecimalLike;
  readonly lengthFt: DecimalLike;
}

export const TALLY_ROUNDINGS = ['exact', 'surface-measure'] as const;
/**
 * exact: thickness x width x length / 12. surface-measure: as hardwood is graded, whole feet of length, surface
 * measure of each board rounded to whole square feet (a half up), then the thickness.
 */
export type TallyRounding = (typeof TALLY_ROUNDINGS)[number];

export interface BoardTallyLine {
  /** Square feet of one board's face. */
  readonly surface: Figure<'ft2'>;
  readonly boardFeetEach: Figure<'bd ft'>;
  readonly boardFeet: Figure<'bd ft'>;
}

export interface BoardTally {
  readonly lines: readonly BoardTallyLine[];
  readonly total: Figure<'bd ft'>;
}

const LEAST_THICKNESS = constant('stock under 1 in counts as 1 in', 'in', 1);
const A_FOOT = constant('one foot', 'ft', 1);
const INCHES_IN_A_FOOT = number(12, 'inches in a foot');

/**
 * Board feet of boards: max(1, nominal thickness in) x width in x length ft / 12 (American Hardwood Export Council,
 * web guide, page "Measurement"; the least thickness: NHLA Rules Book, from memory).
 * @throws CostingInputError naming the board and the field ("boards.2.widthIn")
 */
export function boardTally(
  boards: readonly CountedBoards[],
  rounding: TallyRounding,
  context: CostingContext,
): BoardTally {
  const lines = boards.map((board, index) => lineOf(board, index, rounding, context));
  return {
    lines,
    total: sum(
      'board feet in all',
      'bd ft',
      lines.map((line) => line.boardFeet),
    ),
  };
}

function lineOf(
  board: CountedBoards,
  index: number,
  rounding: TallyRounding,
  context: CostingContext,
): BoardTallyLine {
  const subject = `Line ${index + 1}`;
  const reader = new LeafReader({
    keyPrefix: `${context.keyPrefix ?? 'board-measure'}/${index + 1}`,
    currency: context.currency,
    source: context.source ?? entered(),
    subject,
    path: `boards.${index}`,
  });
  const thickness = reader.read('thicknessIn', board.thicknessIn, {
    label: 'nominal thickness',
    unit: 'in',
    above: 0,
  });
  const width = reader.read('widthIn', board.widthIn, { label: 'width', unit: 'in', above: 0 });
  const length = reader.read('lengthFt', board.lengthFt, { label: 'length', unit: 'ft', above: 0 });
  const count = reader.read('count', board.count, { label: 'boards', unit: 'ratio', above: 0, whole: true });
  const isGraded = rounding === 'surface-measure';
  const counted = isGraded ? roundDown(`${subject}: whole feet of length`, length, A_FOOT) : length;
  const face = derive(`${subject}: face of a board`, 'ft2', 'quotient', [
    derive('width in inches x length in feet', 'ft2', 'product', [width, counted]),
    INCHES_IN_A_FOOT,
  ]);
  const surface = isGraded ? round(`${subject}: surface measure of a board`, face, 0) : face;
  const boardFeetEach = derive(`${subject}: board feet of a board`, 'bd ft', 'product', [
    greatest(`${subject}: counted thickness`, thickness, LEAST_THICKNESS),
    surface,
  ]);
  return { surface, boardFeetEach, boardFeet: scale(`${subject}: board feet`, boardFeetEach, count) };
}
