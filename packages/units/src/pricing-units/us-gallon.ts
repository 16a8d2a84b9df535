import type { PricingUnit } from './pricing-unit.ts';

/** 231 cubic inches; the larger imperial gallon is not meant. */
export const usGallon = {
  id: 'us-gallon',
  label: 'US gallon',
  symbol: 'gal',
  code: 'GLL',
  baseUnit: 'gal',
  dimension: 'liquid',
  factor: '3.785411784',
  aliases: ['gal', 'gals', 'gallon', 'gallons', 'us gal', 'us gallon', 'us gallons', 'gll'],
} as const satisfies PricingUnit;
