import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { positive, within } from '../input-error.ts';
import { FIBRE_SATURATION_PERCENT } from './density.ts';

/**
 * Shrinkage in % from green to M % = S0 x (30 - M) / 30 (Wood Handbook, chapter 4, from memory).
 * @param ovenDryShrinkagePercent S0, green to oven-dry
 * @throws MeasureInputError for moisture outside 0 to 30 %
 */
export function shrinkagePercent(
  ovenDryShrinkagePercent: DecimalLike,
  moisturePercent: DecimalLike,
): Decimal {
  const moisture = within('moisturePercent', moisturePercent, 0, FIBRE_SATURATION_PERCENT);
  const whole = within('ovenDryShrinkagePercent', ovenDryShrinkagePercent, 0, 50);
  return whole.times(decimal(FIBRE_SATURATION_PERCENT).minus(moisture)).div(FIBRE_SATURATION_PERCENT);
}

export interface LumberShrinkage {
  readonly widthPercent: Decimal;
  readonly thicknessPercent: Decimal;
}

/**
 * Shrinkage in % of most softwood lumber from green to M %: width 6.031 - 0.215 M, thickness 5.062 - 0.181 M
 * (USDA FPL-RP-489, Green 1989; 8 to 19 %; not for redwood and cedars).
 * @throws MeasureInputError for moisture outside 8 to 19 %
 */
export function softwoodLumberShrinkage(moisturePercent: DecimalLike): LumberShrinkage {
  const moisture = within('moisturePercent', moisturePercent, 8, 19);
  return {
    widthPercent: decimal('6.031').minus(moisture.times('0.215')),
    thicknessPercent: decimal('5.062').minus(moisture.times('0.181')),
  };
}

/**
 * Width of softwood lumber at one moisture from its width at another, by the width equation above.
 * @param size in any unit, which the answer shares
 * @throws MeasureInputError for moisture outside 8 to 19 %
 */
export function softwoodWidthAt(
  size: DecimalLike,
  fromPercent: DecimalLike,
  toPercent: DecimalLike,
): Decimal {
  const left = (moisture: DecimalLike) => decimal(100).minus(softwoodLumberShrinkage(moisture).widthPercent);
  return positive('size', size).times(left(toPercent)).div(left(fromPercent));
}

/**
 * The same by a rule of 1 % of size for every `pointsPerPercent` of moisture (5, worked back from the printed 13.01 in of
 * Missouri S&T course problem 4.34; the rule itself was not seen).
 * @throws MeasureInputError
 */
export function widthByRuleOfThumb(
  size: DecimalLike,
  fromPercent: DecimalLike,
  toPercent: DecimalLike,
  pointsPerPercent: DecimalLike = 5,
): Decimal {
  const change = within('toPercent', toPercent, 0, FIBRE_SATURATION_PERCENT).minus(
    within('fromPercent', fromPercent, 0, FIBRE_SATURATION_PERCENT),
  );
  const share = change.div(positive('pointsPerPercent', pointsPerPercent)).div(100);
  return positive('size', size).times(share.plus(1));
}
