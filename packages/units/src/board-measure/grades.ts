import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { positive, within } from '../input-error.ts';

export const GRADE_IDS = ['FAS', 'F1F', 'Selects', 'No1C', 'No2A', 'No3A'] as const;
export type GradeId = (typeof GRADE_IDS)[number];

/** One cutting: clear face at least this wide and this long. */
export interface CuttingSize {
  readonly widthIn: string;
  readonly lengthFt: string;
}

export interface Grade {
  readonly id: GradeId;
  readonly label: string;
  readonly minimumWidthIn: string;
  readonly minimumLengthFt: string;
  /** Twelfths of the surface measure that must come in clear cuttings; on the better face for F1F and Selects. */
  readonly yieldTwelfths: number;
  readonly cuttings: readonly CuttingSize[];
  /** Cuttings allowed = floor((surface measure + plus) / by); null where the number is not limited. */
  readonly cuttingsAllowed: { readonly plus: number; readonly by: number } | null;
  /** Grade the poorer face must reach, where the two faces are judged apart. */
  readonly poorFace: GradeId | null;
}

const FAS_CUTTINGS = [
  { widthIn: '4', lengthFt: '5' },
  { widthIn: '3', lengthFt: '7' },
] as const;
const FAS_RULE = {
  yieldTwelfths: 10,
  cuttings: FAS_CUTTINGS,
  cuttingsAllowed: { plus: 0, by: 4 },
} as const;

/**
 * US hardwood grades: American Hardwood Export Council, "Summary of US hardwood lumber grades". No. 3A from two
 * dealers' pages that restate the NHLA rules; that its cuttings are not limited in number is from memory.
 */
export const GRADES: Readonly<Record<GradeId, Grade>> = {
  FAS: { id: 'FAS', label: 'FAS', minimumWidthIn: '6', minimumLengthFt: '8', ...FAS_RULE, poorFace: null },
  F1F: {
    id: 'F1F',
    label: 'FAS one face',
    minimumWidthIn: '6',
    minimumLengthFt: '8',
    ...FAS_RULE,
    poorFace: 'No1C',
  },
  Selects: {
    id: 'Selects',
    label: 'Selects',
    minimumWidthIn: '4',
    minimumLengthFt: '6',
    ...FAS_RULE,
    poorFace: 'No1C',
  },
  No1C: {
    id: 'No1C',
    label: 'No. 1 Common',
    minimumWidthIn: '3',
    minimumLengthFt: '4',
    yieldTwelfths: 8,
    cuttings: [
      { widthIn: '4', lengthFt: '2' },
      { widthIn: '3', lengthFt: '3' },
    ],
    cuttingsAllowed: { plus: 1, by: 3 },
    poorFace: null,
  },
  No2A: {
    id: 'No2A',
    label: 'No. 2A Common',
    minimumWidthIn: '3',
    minimumLengthFt: '4',
    yieldTwelfths: 6,
    cuttings: [{ widthIn: '3', lengthFt: '2' }],
    cuttingsAllowed: { plus: 0, by: 2 },
    poorFace: null,
  },
  No3A: {
    id: 'No3A',
    label: 'No. 3A Common',
    minimumWidthIn: '3',
    minimumLengthFt: '4',
    yieldTwelfths: 4,
    cuttings: [{ widthIn: '3', lengthFt: '2' }],
    cuttingsAllowed: null,
    poorFace: null,
  },
};

/** Kiln drying may take half an inch off each grade's minimum width (AHEC summary, notes). */
export const DRY_WIDTH_ALLOWANCE_IN = '0.5';
/** A cutting unit is 1 in x 1 ft of clear face (NHLA Rules Book, from memory). */
export const CUTTING_UNITS_PER_SQUARE_FOOT = 12;

/** Least clear-face yield of a grade, as a fraction of what is bought (10/12, 8/12, 6/12, 4/12). */
export function gradeYield(grade: GradeId): Decimal {
  return decimal(GRADES[grade].yieldTwelfths).div(12);
}

export interface GradeRequirement {
  /** Cutting units in the whole board. */
  readonly unitsInBoard: Decimal;
  /** Cutting units that must be clear. */
  readonly cuttingUnits: Decimal;
  /** Cuttings they may be taken in; null where not limited. */
  readonly cuttings: Decimal | null;
}

/**
 * What a board of this whole surface measure must give in a grade.
 * @throws MeasureInputError for a surface measure under 1
 */
export function gradeRequirement(grade: GradeId, surfaceMeasure: DecimalLike): GradeRequirement {
  const surface = within('surfaceMeasure', surfaceMeasure, 1, 1000);
  const { yieldTwelfths, cuttingsAllowed } = GRADES[grade];
  return {
    unitsInBoard: surface.times(CUTTING_UNITS_PER_SQUARE_FOOT),
    cuttingUnits: surface.times(yieldTwelfths),
    cuttings: cuttingsAllowed && surface.plus(cuttingsAllowed.plus).div(cuttingsAllowed.by).floor(),
  };
}

/**
 * Board feet to buy for a net need: need / grade yield. A planning figure; a shop's own yield differs.
 * @throws MeasureInputError for a need that is not above 0
 */
export function boardFeetToBuy(netBoardFeet: DecimalLike, grade: GradeId): Decimal {
  return positive('netBoardFeet', netBoardFeet).times(12).div(GRADES[grade].yieldTwelfths);
}
