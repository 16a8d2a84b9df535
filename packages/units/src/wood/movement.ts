import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { positive, within } from '../input-error.ts';
import { FIBRE_SATURATION_PERCENT } from './density.ts';

/** The coefficients hold between these moisture contents (Wood Handbook, chapter 13). */
export const MOVEMENT_LEAST_PERCENT = 6;
export const MOVEMENT_MOST_PERCENT = 14;

/**
 * Change of size = size x coefficient x change of moisture; above 0 when the wood swells (equation of Wood Handbook
 * table 13-5, as an extension page cites it).
 * @param size width or thickness, in any unit, which the answer shares
 * @param coefficient per % of moisture: tangential for flat-sawn, radial for quarter-sawn faces
 * @throws MeasureInputError for moisture outside 6 to 14 %
 */
export function movement(
  size: DecimalLike,
  coefficient: DecimalLike,
  fromPercent: DecimalLike,
  toPercent: DecimalLike,
): Decimal {
  const from = within('fromPercent', fromPercent, MOVEMENT_LEAST_PERCENT, MOVEMENT_MOST_PERCENT);
  const to = within('toPercent', toPercent, MOVEMENT_LEAST_PERCENT, MOVEMENT_MOST_PERCENT);
  return positive('size', size).times(positive('coefficient', coefficient)).times(to.minus(from));
}

/**
 * Coefficient from green to oven-dry shrinkage S %: (S / 3000) / (1 - 20 S / 3000). Derived from the linear rule at
 * 10 % moisture; matches rows of Wood Handbook table 13-5 for walnut, cherry, sugar maple and beech.
 * @throws MeasureInputError
 */
export function movementCoefficient(shrinkagePercent: DecimalLike): Decimal {
  const perPercent = within('shrinkagePercent', shrinkagePercent, 0, 50).div(FIBRE_SATURATION_PERCENT * 100);
  return perPercent.div(decimal(1).minus(perPercent.times(20)));
}
