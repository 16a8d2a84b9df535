import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { MM_PER_INCH } from '../conversions.ts';
import { MeasureInputError, positive } from '../input-error.ts';

/** A rough hardwood thickness as the trade names it, and what is left of it surfaced, in inches. */
export interface RoughThickness {
  readonly name: string;
  readonly nominalIn: string;
  readonly surfacedTwoSidesIn: string;
  readonly surfacedOneSideIn: string | null;
  /** True for a value recalled rather than seen. */
  readonly fromMemory?: true;
}

function row(name: string, nominalIn: string, two: string, one: string | null = null): RoughThickness {
  return { name, nominalIn, surfacedTwoSidesIn: two, surfacedOneSideIn: one };
}

// Engineering ToolBox, "Hardwood Lumber - Dimensions"; two other tables agree. These are grading thicknesses, not a
// promise of delivered thickness: 4/4 is often delivered at 15/16 or 3/4 in.
/** Stock under 1 in. */
export const THIN_STOCK: readonly RoughThickness[] = [
  row('3/8', '0.375', '0.1875'),
  row('1/2', '0.5', '0.3125', '0.375'),
  row('5/8', '0.625', '0.4375', '0.5'),
  row('3/4', '0.75', '0.5625', '0.625'),
];

/** The quarters, thinnest first. */
export const QUARTERS: readonly RoughThickness[] = [
  row('4/4', '1', '0.8125', '0.875'),
  row('5/4', '1.25', '1.0625', '1.125'),
  row('6/4', '1.5', '1.3125', '1.375'),
  row('7/4', '1.75', '1.5'),
  row('8/4', '2', '1.75', '1.8125'),
  { ...row('10/4', '2.5', '2.25'), fromMemory: true },
  row('12/4', '3', '2.75', '2.8125'),
  row('14/4', '3.5', '3.25'),
  row('16/4', '4', '3.75', '3.8125'),
];

/** Nominal thickness in mm. */
export function nominalThicknessMm({ nominalIn }: RoughThickness): Decimal {
  return decimal(nominalIn).times(MM_PER_INCH);
}

/** Thickness left after both faces are surfaced, in mm. */
export function surfacedThicknessMm({ surfacedTwoSidesIn }: RoughThickness): Decimal {
  return decimal(surfacedTwoSidesIn).times(MM_PER_INCH);
}

/** The rough thickness of this name ("8/4"), or undefined. */
export function roughThickness(name: string): RoughThickness | undefined {
  return [...THIN_STOCK, ...QUARTERS].find((one) => one.name === name.trim());
}

/**
 * The thinnest quarter whose surfaced thickness reaches the part.
 * @param finishedMm finished thickness of the part
 * @param stocked what can be had, in any order; the quarters when absent
 * @throws MeasureInputError when none is thick enough
 */
export function quarterFor(
  finishedMm: DecimalLike,
  stocked: readonly RoughThickness[] = QUARTERS,
): RoughThickness {
  const wanted = positive('finishedMm', finishedMm);
  const fitting = stocked
    .filter((one) => surfacedThicknessMm(one).gte(wanted))
    .sort((a, b) => nominalThicknessMm(a).cmp(nominalThicknessMm(b)));
  const [thinnest] = fitting;
  if (thinnest !== undefined) return thinnest;
  const reason = `is ${wanted} mm, more than any stocked thickness gives`;
  throw new MeasureInputError('finishedMm', reason, 'laminate the part or add thicker stock');
}
