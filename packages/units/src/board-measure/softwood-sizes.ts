import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { positive } from '../input-error.ts';

export interface SoftwoodSize {
  /** As sold, "2x4". */
  readonly name: string;
  readonly nominalIn: readonly [thickness: string, width: string];
  /** Dressed and dry. */
  readonly actualIn: readonly [thickness: string, width: string];
  /** The same as the standard rounds it to millimetres. */
  readonly actualMm: readonly [thickness: string, width: string];
}

const ACTUAL: Readonly<Record<string, readonly [inches: string, mm: string]>> = {
  '1': ['0.75', '19'],
  '2': ['1.5', '38'],
  '3': ['2.5', '64'],
  '4': ['3.5', '89'],
  '6': ['5.5', '140'],
  '8': ['7.25', '184'],
  '10': ['9.25', '235'],
  '12': ['11.25', '286'],
};

function size(thickness: string, width: string): SoftwoodSize {
  const [thicknessIn = '', thicknessMm = ''] = ACTUAL[thickness] ?? [];
  const [widthIn = '', widthMm = ''] = ACTUAL[width] ?? [];
  return {
    name: `${thickness}x${width}`,
    nominalIn: [thickness, width],
    actualIn: [thicknessIn, widthIn],
    actualMm: [thicknessMm, widthMm],
  };
}

/**
 * Boards and dimension lumber, dressed dry, of the American Softwood Lumber Standard PS 20, as Engineering ToolBox,
 * "Softwood Lumber - Dimensions", lists them (PS 20-20 itself not opened).
 */
export const SOFTWOOD_SIZES: readonly SoftwoodSize[] = [
  ...['2', '3', '4', '6', '8', '10', '12'].map((width) => size('1', width)),
  ...['2', '4', '6', '8', '10', '12'].map((width) => size('2', width)),
  size('4', '4'),
  size('4', '6'),
];

/**
 * Dressed dry size in inches of a nominal softwood size, by the rule of thumb of the same page: under 2 in less 1/4,
 * 2 to under 8 in less 1/2, 8 in and over less 3/4. One table has 6 1/4 for a nominal 7: the rule's exception.
 * @throws MeasureInputError when the nominal size leaves nothing
 */
export function softwoodActualIn(nominalIn: DecimalLike): Decimal {
  const nominal = decimal(nominalIn);
  const loss = nominal.lt(2) ? '0.25' : nominal.lt(8) ? '0.5' : '0.75';
  positive('nominalIn', nominal.minus(loss));
  return nominal.minus(loss);
}
