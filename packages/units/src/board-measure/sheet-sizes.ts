import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { M2_PER_SQUARE_FOOT } from '../conversions.ts';
import { positive } from '../input-error.ts';

export interface SheetSize {
  readonly name: string;
  readonly lengthMm: string;
  readonly widthMm: string;
  readonly source: string;
}

const COMMON_PRACTICE = 'common practice, no source';

/** Whole sheets as sold. 4 x 8 ft and 1220 x 2440 mm are two sizes: the metric one is 0.8 x 1.6 mm larger. */
export const SHEET_SIZES: readonly SheetSize[] = [
  { name: '4 x 8 ft', lengthMm: '2438.4', widthMm: '1219.2', source: 'mill size table' },
  { name: '1220 x 2440 mm', lengthMm: '2440', widthMm: '1220', source: 'mill size table (+-4, +-3 mm)' },
  { name: '5 x 5 ft', lengthMm: '1524', widthMm: '1524', source: 'one craft page' },
  { name: '1525 x 1525 mm', lengthMm: '1525', widthMm: '1525', source: COMMON_PRACTICE },
  { name: '2800 x 2070 mm', lengthMm: '2800', widthMm: '2070', source: COMMON_PRACTICE },
];

/** Area of a face in m2 from its sides in mm. @throws MeasureInputError for a side that is not above 0 */
export function faceAreaM2(lengthMm: DecimalLike, widthMm: DecimalLike): Decimal {
  return positive('lengthMm', lengthMm).times(positive('widthMm', widthMm)).div(1_000_000);
}

/** Square feet of an area in m2. */
export function squareFeet(areaM2: DecimalLike): Decimal {
  return decimal(areaM2).div(M2_PER_SQUARE_FOOT);
}
