import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { KG_PER_POUND, M3_PER_BOARD_FOOT, M3_PER_CUBIC_FOOT } from '../conversions.ts';
import { positive, within } from '../input-error.ts';

/** kg/m3, as the Wood Handbook's density equation takes it. */
export const WATER_KG_M3 = decimal(1000);
/** lb/ft3, as the same equation takes it. */
export const WATER_LB_FT3 = decimal('62.43');
/** % moisture above which the cell walls are full and wood neither shrinks nor swells (Wood Handbook, from memory). */
export const FIBRE_SATURATION_PERCENT = 30;

function wetness(moisturePercent: DecimalLike): Decimal {
  return within('moisturePercent', moisturePercent, 0, 300).div(100).plus(1);
}

/**
 * Density in kg/m3 = 1000 x G x (1 + M / 100) (USDA Wood Handbook GTR-190, chapter 4).
 * @param specificGravity oven-dry mass on the volume at the stated moisture
 * @throws MeasureInputError
 */
export function densityKgM3(specificGravity: DecimalLike, moisturePercent: DecimalLike = 12): Decimal {
  return WATER_KG_M3.times(positive('specificGravity', specificGravity)).times(wetness(moisturePercent));
}

/** The same in lb/ft3, with water at 62.43 lb/ft3. @throws MeasureInputError */
export function densityLbFt3(specificGravity: DecimalLike, moisturePercent: DecimalLike = 12): Decimal {
  return WATER_LB_FT3.times(positive('specificGravity', specificGravity)).times(wetness(moisturePercent));
}

/**
 * Density in lb/ft3 from a specific gravity on oven-dry volume: 62.4 x SG / (1 + 0.009 x SG x M) x (1 + M / 100)
 * (Engineering ToolBox, "Density of Wood"). Not for a specific gravity at 12 %.
 * @throws MeasureInputError
 */
export function densityLbFt3FromOvenDry(ovenDryGravity: DecimalLike, moisturePercent: DecimalLike): Decimal {
  const gravity = positive('ovenDryGravity', ovenDryGravity);
  const swelling = gravity.times(moisturePercent).times('0.009').plus(1);
  return decimal('62.4').times(gravity).div(swelling).times(wetness(moisturePercent));
}

/**
 * Specific gravity on the volume at M % from the green one: Gb / (1 - 0.265 a Gb), a = (30 - M) / 30
 * (Wood Handbook, chapter 4, from memory).
 * @throws MeasureInputError for moisture outside 0 to 30 %
 */
export function specificGravityAt(greenGravity: DecimalLike, moisturePercent: DecimalLike): Decimal {
  const green = positive('greenGravity', greenGravity);
  const moisture = within('moisturePercent', moisturePercent, 0, FIBRE_SATURATION_PERCENT);
  const dryness = decimal(FIBRE_SATURATION_PERCENT).minus(moisture).div(FIBRE_SATURATION_PERCENT);
  return green.div(decimal(1).minus(dryness.times(green).times('0.265')));
}

/** kg of one board foot (144 in3 that are there, no floor) of this density. */
export function kgPerBoardFoot(densityInKgM3: DecimalLike): Decimal {
  return positive('densityInKgM3', densityInKgM3).times(M3_PER_BOARD_FOOT);
}

/** lb of one board foot of this density. */
export function lbPerBoardFoot(densityInKgM3: DecimalLike): Decimal {
  return kgPerBoardFoot(densityInKgM3).div(KG_PER_POUND);
}

/** kg of a piece from its actual volume in m3 and density in kg/m3. */
export function weightKg(volumeM3: DecimalLike, densityInKgM3: DecimalLike): Decimal {
  return positive('volumeM3', volumeM3).times(positive('densityInKgM3', densityInKgM3));
}

/** lb of a piece from its actual volume in ft3 and density in lb/ft3. */
export function weightLb(volumeFt3: DecimalLike, densityInLbFt3: DecimalLike): Decimal {
  return positive('volumeFt3', volumeFt3).times(positive('densityInLbFt3', densityInLbFt3));
}

/** ft3 of so many board feet: twelve make a cubic foot. */
export function cubicFeet(boardFeetOfVolume: DecimalLike): Decimal {
  return positive('boardFeetOfVolume', boardFeetOfVolume).times(M3_PER_BOARD_FOOT).div(M3_PER_CUBIC_FOOT);
}
