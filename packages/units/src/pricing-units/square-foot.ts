import type { PricingUnit } from './pricing-unit.ts';

/** Recommendation 20 has no SFT: the square foot is FTK. */
export const squareFoot = {
  id: 'square-foot',
  label: 'square foot',
  symbol: 'ft²',
  code: 'FTK',
  baseUnit: 'ft2',
  dimension: 'area',
  factor: '0.09290304',
  aliases: ['sq ft', 'sqft', 'sf', 'ft2', 'ft^2', 'square foot', 'square feet', 'ftk'],
} as const satisfies PricingUnit;
